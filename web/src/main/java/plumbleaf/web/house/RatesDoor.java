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
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.labour.LearnedRate;
import plumbleaf.engine.labour.Learning;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.pricing.PriceLine;
import plumbleaf.engine.pricing.WarrantyRecord;
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
        List<WarrantyRecord.Job> jobs = new ArrayList<>();
        for (AllDesigns.Of of : designs.latest()) {
            Design design = of.design();
            hours.addAll(design.job().log().hours());
            for (TaskHours task : design.quote().labour().tasks())
                used.putIfAbsent(
                        task.rate().task() + "/" + task.rate().soil() + "/"
                                + task.rate().upTo().inches(),
                        task.rate());
            jobs.add(calls(design));
        }
        List<Table.Line> lines = new ArrayList<>();
        for (LearnedRate rate : Learning.of(hours, List.copyOf(used.values()))) lines.add(line(rate));
        List<Table.Line> causeLines = new ArrayList<>();
        WarrantyRecord record = WarrantyRecord.of(jobs);
        for (WarrantyRecord.OfCause cause : record.causes())
            causeLines.add(new Table.Line(
                    "",
                    List.of(
                            cause.cause().words(),
                            Integer.toString(cause.calls()),
                            DecimalText.upTo(cause.hours(), 1),
                            cause.cost().text())));
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
                        new Table(words(record), List.of("Cause", "Calls", "Hours", "Came to"), causeLines)));
    }

    private static WarrantyRecord.Job calls(Design design) {
        UnitPrice hourly = design.quote().price().lines().stream()
                .filter(line -> line.unit().equals("hour"))
                .map(PriceLine::price)
                .findFirst()
                .orElse(UnitPrice.of("0"));
        return new WarrantyRecord.Job(
                design.quote().price(), hourly, design.job().log().complaints());
    }

    private static String words(WarrantyRecord record) {
        return "Calls under warranty, by cause; in hours and parts they came to "
                + DecimalText.upTo(100 * record.share(), 2) + " % of the price of all " + record.jobs()
                + " jobs here: the reserve they would have asked for";
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
                        between(rate),
                        words));
    }

    /** One record, or several alike, make no span; so nothing is said of how sure it is. */
    private static String between(LearnedRate rate) {
        if (rate.records() < 2 || rate.coverage() <= 0) return "not yet: one record is no span";
        return DecimalText.upTo(rate.low(), DIGITS) + " and " + DecimalText.upTo(rate.high(), DIGITS) + ", "
                + DecimalText.whole(rate.coverage() * 100) + "% sure";
    }
}
