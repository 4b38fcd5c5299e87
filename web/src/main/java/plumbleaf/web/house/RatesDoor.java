package plumbleaf.web.house;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Complaint;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.labour.LearnedRate;
import plumbleaf.engine.labour.Learning;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;

/** What the hours written down in all jobs make of the rates they were priced with, and what calls under warranty were about. Changes nothing. */
@Controller
class RatesDoor {
    private static final int DIGITS = 3;

    private final AllDesigns designs;
    private final Pages pages;

    RatesDoor(AllDesigns designs, Pages pages) {
        this.designs = designs;
        this.pages = pages;
    }

    @GetMapping("/rates")
    ResponseEntity<String> rates(HttpServletRequest request) {
        List<Actual> hours = new ArrayList<>();
        Map<String, LabourRate> used = new LinkedHashMap<>();
        Map<String, Integer> causes = new LinkedHashMap<>();
        Calls calls = new Calls();
        for (AllDesigns.Of of : designs.latest()) {
            Design design = of.design();
            hours.addAll(design.job().log().hours());
            for (TaskHours task : design.quote().labour().tasks())
                used.putIfAbsent(
                        task.rate().task() + "/" + task.rate().soil() + "/"
                                + task.rate().upTo().inches(),
                        task.rate());
            for (Complaint call : design.job().log().complaints())
                causes.merge(call.cause().words(), 1, Integer::sum);
            calls.add(design);
        }
        List<Table.Line> lines = new ArrayList<>();
        for (LearnedRate rate : Learning.of(hours, List.copyOf(used.values()))) lines.add(line(rate));
        List<Table.Line> causeLines = new ArrayList<>();
        causes.forEach((cause, count) -> causeLines.add(new Table.Line("", List.of(cause, Integer.toString(count)))));
        return pages.html(
                HttpStatus.OK,
                "rates.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Rates"),
                        "rates",
                        new Table(
                                "Hours of one person for one; the latest " + Learning.LATEST + " records of each task",
                                List.of("Task", "Soil", "Per", "Records", "Book", "Median", "Between", ""),
                                lines),
                        "causes",
                        new Table(calls.words(), List.of("Cause", "Calls"), causeLines)));
    }

    /** What calls came to, as a share of the price of the jobs they and all others were about: what a reserve would have had to be. */
    private static final class Calls {
        private double cost;
        private double price;

        void add(Design design) {
            double hourly = design.quote().price().lines().stream()
                    .filter(line -> line.unit().equals("hour"))
                    .mapToDouble(line -> line.price().dollars().doubleValue())
                    .findFirst()
                    .orElse(0);
            for (Complaint call : design.job().log().complaints())
                cost += call.hours() * hourly + call.cost().inDollars().doubleValue();
            price += design.quote().price().price().inDollars().doubleValue();
        }

        String words() {
            return "Calls under warranty, by cause; in hours and parts they came to "
                    + DecimalText.upTo(price == 0 ? 0 : 100 * cost / price, 2) + " % of the price of all jobs here";
        }
    }

    private static Table.Line line(LearnedRate rate) {
        String words = rate.suggestsAnother()
                ? "the book is off: " + DecimalText.upTo(rate.median(), DIGITS) + "?"
                : rate.coverage() >= LearnedRate.SURE ? "holds" : "too few to say";
        return new Table.Line(
                "",
                List.of(
                        rate.book().name(),
                        rate.book().soil(),
                        rate.book().per(),
                        Integer.toString(rate.records()),
                        DecimalText.upTo(rate.book().hours(), DIGITS),
                        DecimalText.upTo(rate.median(), DIGITS),
                        DecimalText.upTo(rate.low(), DIGITS) + " and " + DecimalText.upTo(rate.high(), DIGITS) + ", "
                                + DecimalText.whole(rate.coverage() * 100) + "% sure",
                        words));
    }
}
