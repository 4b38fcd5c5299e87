package plumbleaf.web.cutlist;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.cutlist.CutList;
import plumbleaf.jobfile.cutlist.CutListFile;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Pages;

/** Plans a cut list that somebody types or pastes. */
@Controller
class CutListDoor {
    /** Larger ones are for the command line, where nobody waits for a page. */
    private static final int MOST_PIECES = 5_000;

    private static final int MOST_ERRORS = 60;
    private static final String LIST = "The list";
    /** What the page begins with: the headings and a row of each kind. */
    private static final String EXAMPLE = """
            what,length,count,price,mark
            bar,20 ft,,58.40,
            offcut,6' 1",1,,
            piece,5' 11",4,,post
            piece,3' 10-1/2",6,,rail
            """;

    private static final Map<String, String> FIRST =
            Map.of("item", "", "list", EXAMPLE, "kerf", "1/8\"", "trim", "1/2\"", "keep", "24\"");

    private final HouseBars bars;
    private final Pages pages;

    CutListDoor(HouseBars bars, Pages pages) {
        this.bars = bars;
        this.pages = pages;
    }

    @GetMapping("/yard/cut-list")
    ResponseEntity<String> blank(HttpServletRequest request) {
        return shown(request, FIRST, List.of(), List.of());
    }

    @PostMapping("/yard/cut-list")
    ResponseEntity<String> plan(HttpServletRequest request, @RequestParam Map<String, String> sent) {
        Map<String, String> typed = new LinkedHashMap<>(FIRST);
        typed.putAll(sent);
        List<String> errors = new ArrayList<>();
        SawRules saw = new SawRules(
                nanometres("Kerf", typed.getOrDefault("kerf", ""), errors),
                nanometres("End trim", typed.getOrDefault("trim", ""), errors),
                nanometres("Keep from", typed.getOrDefault("keep", ""), errors));
        // A spreadsheet's cells come with tabs between them.
        String table = typed.getOrDefault("list", "").replace('\t', ',');
        CutListFile.Answer read = CutListFile.read(LIST, table, bars.of(typed.getOrDefault("item", "")));
        for (InputError error : read.errors())
            errors.add(error.text().replaceFirst("^" + LIST + ":(\\d+):", "Line $1:"));
        CutList list = read.list();
        if (list.pieces().size() > MOST_PIECES)
            errors.add(LIST + ": these are " + list.pieces().size() + " pieces; a page plans up to " + MOST_PIECES
                    + ", plumbleaf cutlist more");
        if (!errors.isEmpty()) return shown(request, typed, errors, List.of());
        return list.planned(new ProvenCutPlanner(), saw, CutTask.JOB_STEPS)
                .match(
                        plan -> shown(request, typed, List.of(), List.of(plan.is())),
                        none -> shown(request, typed, List.of(none.problem() + "; " + none.cure()), List.of()));
    }

    private static long nanometres(String name, String text, List<String> errors) {
        return LengthText.length(text).match(read -> read.is().nanometres(), refused -> {
            errors.add(name + " \"" + text + "\": " + refused.problem() + "; " + refused.cure());
            return 0L;
        });
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request, Map<String, String> typed, List<String> errors, List<CutPlan> plans) {
        return pages.html(
                errors.isEmpty() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT,
                "cutList.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Cut list"),
                        "typed",
                        typed,
                        "items",
                        bars.items(),
                        "errors",
                        errors.stream().limit(MOST_ERRORS).toList(),
                        "plans",
                        plans.stream()
                                .map(plan -> CutListPlan.of(plan, Breadth.of(request)))
                                .toList()));
    }
}
