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
import plumbleaf.jobfile.cutlist.CutList;
import plumbleaf.jobfile.cutlist.CutListFile;
import plumbleaf.jobfile.cutlist.SawEntry;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Pages;

/** Plans a cut list that somebody types or pastes. */
@Controller
class CutListDoor {
    /** Larger ones are for the command line, where nobody waits for a page. */
    private static final int MOST_PIECES = 5_000;

    private static final int MOST_ERRORS = 60;
    private static final String LIST = "the list";
    /** What the page begins with: the headings and a row of each kind. */
    private static final String EXAMPLE = """
            what,length,count,price,mark
            bar,20 ft,,58.40,
            offcut,6' 1",1,,
            piece,5' 11",4,,post
            piece,3' 10-1/2",6,,rail
            """;

    private static final Map<String, String> FIRST = Map.of(
            "item",
            "",
            "list",
            EXAMPLE,
            "kerf",
            SawEntry.USUAL.kerf(),
            "trim",
            SawEntry.USUAL.trim(),
            "keep",
            SawEntry.USUAL.keep());

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
        List<InputError> wrong = new ArrayList<>();
        SawRules saw = new SawEntry(
                        typed.getOrDefault("kerf", ""), typed.getOrDefault("trim", ""), typed.getOrDefault("keep", ""))
                .rules(LIST, List.of("Kerf", "End trim", "Keep from"), wrong);
        // A spreadsheet's cells come with tabs between them.
        String table = typed.getOrDefault("list", "").replace('\t', ',');
        CutListFile.Answer read = CutListFile.read(LIST, table, bars.of(typed.getOrDefault("item", "")));
        wrong.addAll(read.errors());
        CutList list = read.list();
        if (list.pieces().size() > MOST_PIECES)
            wrong.add(InputError.ofFile(
                    LIST,
                    "these are " + list.pieces().size() + " pieces",
                    "a page plans up to " + MOST_PIECES + ", plumbleaf cutlist more"));
        if (!wrong.isEmpty())
            return shown(
                    request,
                    typed,
                    wrong.stream().limit(MOST_ERRORS).map(CutListDoor::words).toList(),
                    List.of());
        return list.planned(new ProvenCutPlanner(), saw, CutTask.JOB_STEPS)
                .match(
                        plan -> shown(request, typed, List.of(), List.of(plan.is())),
                        none -> shown(request, typed, List.of(none.problem() + "; " + none.cure()), List.of()));
    }

    /** The page has only one list, so its line is enough. */
    private static String words(InputError error) {
        return error.line() > 0 ? "Line " + error.line() + ": " + error.said() : error.said();
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
                        errors,
                        "plans",
                        plans.stream()
                                .map(plan -> CutListPlan.of(plan, Breadth.of(request)))
                                .toList()));
    }
}
