package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.BaysBeside;
import plumbleaf.engine.line.GatePlace;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Layouts;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.wind.Screen;

/** A yard's fence with the places it leaves for gates: the line laid out, the wind on it, its own posts. An edit of a leaf, and a remedy that is one, leaves it as it is. */
final class FenceWork {
    private static final int LAID_AGAIN = 2;

    private final Question question;
    private final Job job;
    private final Catalogue catalogue;
    private final Standards standards;
    private final List<RunLine> lines;
    private final Ground ground;
    private final List<RunWind> winds;
    private final Layout layout;
    private final WindSpacing spacing;
    private final PostWork posts;
    private final Map<String, PostDesign> designed = new LinkedHashMap<>();

    /**
     * All that a fence is worked out from, except what is sold and the standards.
     *
     * @param job without gates, builds and money
     * @param runs what each is built of
     * @param gates so much of each as a line knows
     */
    record Question(Job job, List<PickedRun> runs, List<GatePlace> gates) {
        Question {
            runs = List.copyOf(runs);
            gates = List.copyOf(gates);
        }

        Picks picks() {
            return new Picks(runs, new LinkedHashMap<>(), List.of());
        }
    }

    FenceWork(Question question, DesignMemory.Surveyed surveyed, Catalogue catalogue, Standards standards) {
        this.question = question;
        this.job = question.job();
        this.catalogue = catalogue;
        this.standards = standards;
        this.lines = surveyed.lines();
        this.ground = surveyed.ground();
        List<RunWind> made = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) made.add(windOn(job.runs().get(i), lines.get(i)));
        this.winds = List.copyOf(made);
        this.layout = laidOut();
        this.spacing = WindSpacing.asBuilt(job, catalogue, question.picks(), winds, layout);
        this.posts = new PostWork(job, catalogue, standards, layout);
    }

    /** A lone gate's run has no fence of its own: the leaf's own height stands for the wall it closes. */
    private RunWind windOn(Run run, RunLine line) {
        Screen screen = catalogue
                .style(run.style())
                .map(style -> FenceScreen.of(style, catalogue, run.infill()))
                .orElse(Screen.flat(1));
        return new RunWind(
                job.site(), run, line, screen, run.infill(), run.bottomGap(), question.gates(), standards.wind());
    }

    /**
     * Where an engineered fence turns out to stand taller than asked, it is laid out again for the wind on it as it was built; and again where it then stands otherwise,
     * some few times. What is still too far apart the checks of its posts say.
     */
    private Layout laidOut() {
        Picks picks = question.picks();
        Layout built = laidOut(WindSpacing.asAsked(job, catalogue, picks, winds));
        for (int i = 0; i < LAID_AGAIN; i++) {
            WindSpacing asBuilt = WindSpacing.asBuilt(job, catalogue, picks, winds, built);
            if (asBuilt.holds(built)) return built;
            built = laidOut(asBuilt);
        }
        return built;
    }

    private Layout laidOut(WindSpacing limit) {
        return Layouts.of(job, catalogue, ground, lines, question.gates(), question.picks(), limit);
    }

    Ground ground() {
        return ground;
    }

    Layout layout() {
        return layout;
    }

    RunLine line(Run run) {
        return lines.get(job.runs().indexOf(run));
    }

    RunWind wind(Run run) {
        return winds.get(job.runs().indexOf(run));
    }

    BaysBeside bays() {
        return posts.bays();
    }

    /** The greatest spacing that the wind leaves the posts of each run. */
    List<Finding> spacingFindings() {
        return spacing.findings();
    }

    /** One of its own posts. */
    PostDesign post(Post post) {
        return designed.computeIfAbsent(post.id(), id -> {
            Run run = job.run(post.run());
            return posts.linePost(post, question.picks().of(run), wind(run));
        });
    }
}
