package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.ground.LaterGround;
import plumbleaf.engine.job.Climbable;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PoolBarrier;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunBuild;
import plumbleaf.engine.job.RunStretch;
import plumbleaf.engine.job.Start;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.jobfile.input.Nearest;

/** What can only be checked once the whole job is read: names that must exist, places that must lie inside, ids that must differ. */
final class JobChecks {
    private static final Length LONGEST_JOB = Length.feet(100 * 5280);
    /** Stands for every sum beyond the longest job, so that sums stay within what a length can hold. */
    private static final Length BEYOND = LONGEST_JOB.plus(Length.inches(1));

    private static final int LONGEST_ID = 20;
    private static final int MOST_PARTS = 2000;

    private final Job job;
    private final Catalogue catalogue;
    private final List<Integer> runAt;
    private final List<Integer> gateAt;
    private final Set<String> unfinished;
    private final Refusal refusal;
    private final Map<String, Length> runLengths = new LinkedHashMap<>();
    private final Map<String, String> ids = new LinkedHashMap<>();

    /** How a check says what is wrong at a place of the file. */
    interface Refusal {
        void refuse(String field, String problem, String cure);
    }

    /**
     * @param runAt where each run of the job stands in the file, since a draft may leave some out
     * @param gateAt the same for gates
     * @param unfinished ids of what a draft left out
     */
    JobChecks(
            Job job,
            Catalogue catalogue,
            List<Integer> runAt,
            List<Integer> gateAt,
            Set<String> unfinished,
            Refusal refusal) {
        this.job = job;
        this.catalogue = catalogue;
        this.runAt = List.copyOf(runAt);
        this.gateAt = List.copyOf(gateAt);
        this.unfinished = new LinkedHashSet<>(unfinished);
        this.refusal = refusal;
        for (Run run : job.runs()) runLengths.put(run.id(), lengthOf(run));
    }

    void all() {
        if (job.runs().size() > MOST_PARTS || job.gates().size() > MOST_PARTS) {
            refuse(
                    job.runs().size() > MOST_PARTS ? "runs" : "gates",
                    "there are more than " + MOST_PARTS,
                    "split the job");
            return;
        }
        if (job.runs().isEmpty() && !job.draft())
            refuse("runs", "a job needs a run", "write \"runs\": [ { ... } ], or \"draft\": true while you are at it");
        for (int i = 0; i < job.runs().size(); i++) run(job.runs().get(i), "runs[" + runAt.get(i) + "]");
        new GateChecks(job, catalogue, gateAt, this).all();
        new GroundChecks(job.ground(), this).all();
        later();
        existing();
        siteRules();
        builds();
        Length total = Length.ZERO;
        for (Length length : runLengths.values())
            total = total.compareTo(LONGEST_JOB) > 0 ? BEYOND : total.plus(length);
        if (total.compareTo(LONGEST_JOB) > 0)
            refuse("runs", "this job has more than a hundred miles of fence", "split it into several");
    }

    void refuse(String field, String problem, String cure) {
        refusal.refuse(field, problem, cure);
    }

    static Length lengthOf(Run run) {
        Length sum = Length.ZERO;
        for (Leg leg : run.legs())
            sum = sum.plus(leg.length()).compareTo(LONGEST_JOB) > 0 ? BEYOND : sum.plus(leg.length());
        return sum;
    }

    String show(Length length) {
        return job.display().length(length);
    }

    /** Ids are the user's names; no two things share one. */
    void id(String id, String field) {
        boolean plain = !id.isEmpty() && id.length() <= LONGEST_ID;
        for (int i = 0; i < id.length(); i++) {
            char c = id.charAt(i);
            boolean letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
            plain = plain && (letter || (c >= '0' && c <= '9') || c == '-' || c == '_');
        }
        if (!plain) refuse(field + ".id", "an id is up to 20 letters, digits, - and _", "write one such as R1");
        String first = ids.putIfAbsent(id, field);
        if (first != null) refuse(field + ".id", id + " is the id of " + first + " already", "give this one another");
    }

    /** Whether the run is there; says so where it is not, unless a draft has only left it out. */
    boolean runThere(String id, String field) {
        if (runLengths.containsKey(id)) return true;
        if (!id.isEmpty() && !unfinished.contains(id))
            refuse(field, "there is no run " + id, nearest(id, runLengths.keySet(), "name a run of this job"));
        return false;
    }

    void stationInside(String run, Length station, String field) {
        Length end = runLengths.getOrDefault(run, station);
        if (station.compareTo(end) > 0)
            refuse(
                    field,
                    run + " ends at " + show(end),
                    "write a station from 0' to " + show(end) + ", or lengthen the run");
    }

    static String nearest(String word, Collection<String> known, String otherwise) {
        return Nearest.to(word, known).map(near -> "write " + near).orElse(otherwise);
    }

    private void run(Run run, String at) {
        id(run.id(), at);
        List<String> styles = new ArrayList<>();
        for (FenceStyle style : catalogue.styles()) styles.add(style.id());
        styles.add("none");
        if (!styles.contains(run.style()))
            refuse(
                    at + ".style",
                    "the catalogue has no such style",
                    nearest(run.style(), styles, "write one of " + String.join(", ", styles)));
        for (int i = 0; i < run.noDig().size(); i++) {
            NoDig noDig = run.noDig().get(i);
            String field = at + ".noDig[" + i + "]";
            if (noDig.from().compareTo(noDig.to()) >= 0)
                refuse(field + ".to", "this is not beyond " + show(noDig.from()), "write the farther edge here");
            stationInside(run.id(), noDig.from(), field + ".from");
            if (noDig.ticket().isSaid() && noDig.marked(job.existing()).isEmpty())
                refuse(
                        field + ".ticket",
                        "no locate ticket has this number",
                        "write the ticket under existing.tickets, or strike this");
        }
        for (int i = 0; i < run.fits().size(); i++)
            stationInside(run.id(), run.fits().get(i).to(), at + ".fits[" + i + "].to");
        for (int i = 0; i < run.otherPosts().size(); i++)
            stationInside(run.id(), run.otherPosts().get(i).from(), at + ".otherPosts[" + i + "].from");
        for (int i = 0; i < run.sides().size(); i++) {
            String side = at + ".sides[" + i + "]";
            stationInside(run.id(), run.sides().get(i).to(), side + ".to");
            post(run.sides().get(i).post(), side + ".post");
        }
        for (int i = 0; i < run.set().size(); i++) {
            id(run.set().get(i).id(), at + ".set[" + i + "]");
            stationInside(run.id(), run.set().get(i).station(), at + ".set[" + i + "].station");
        }
        end(run, run.first().match(free -> "", wall -> "", joins -> joins.run(), theirs -> ""), at + ".ends[0].run");
        if (!run.isRing())
            end(run, run.last().match(free -> "", wall -> "", joins -> joins.run(), theirs -> ""), at + ".ends[1].run");
        else if (run.legs().size() < 3)
            refuse(at + ".ends[1].run", "two legs make no ring", "name another run, or the run's other legs");
        for (int i = 0; i < run.checks().size(); i++) {
            stationInside(run.id(), run.checks().get(i).from(), at + ".checks[" + i + "].from");
            stationInside(run.id(), run.checks().get(i).to(), at + ".checks[" + i + "].to");
        }
        run.start().match(plan -> true, on -> startsOn(run, on, at + ".start"));
    }

    /** A start on a run needs one whose place is known: it comes before. */
    private boolean startsOn(Run run, Start.OnRun on, String field) {
        if (!runThere(on.run(), field + ".run")) return false;
        stationInside(on.run(), on.station(), field + ".station");
        List<String> ids = job.runs().stream().map(Run::id).toList();
        boolean before = ids.indexOf(on.run()) < ids.indexOf(run.id());
        if (!before) refuse(field + ".run", on.run() + " does not come before " + run.id(), "give it before this run");
        return before;
    }

    private void end(Run run, String joined, String field) {
        if (joined.isEmpty()) return;
        if (joined.equals(run.id()))
            refuse(field, "a run does not begin on itself", "where it goes round, let its last end join it");
        else runThere(joined, field);
    }

    private void later() {
        for (int i = 0; i < job.ground().later().size(); i++) {
            LaterGround later = job.ground().later().get(i);
            String at = "ground.later[" + i + "]";
            if (runThere(later.run(), at + ".run")) stationInside(later.run(), later.from(), at + ".from");
            if (later.from().compareTo(later.to()) >= 0)
                refuse(at + ".to", "this is not beyond " + show(later.from()), "write the farther edge here");
        }
    }

    private void existing() {
        for (int i = 0; i < job.existing().lines().size(); i++) {
            PrivateLine line = job.existing().lines().get(i);
            String at = "existing.lines[" + i + "]";
            if (runThere(line.run(), at + ".run")) stationInside(line.run(), line.station(), at + ".station");
        }
        for (int i = 0; i < job.existing().plugs().size(); i++) {
            Plug plug = job.existing().plugs().get(i);
            String at = "existing.plugs[" + i + "]";
            if (runThere(plug.run(), at + ".run")) stationInside(plug.run(), plug.station(), at + ".station");
        }
    }

    private void siteRules() {
        for (PoolBarrier pool : job.rules().pools()) {
            for (int i = 0; i < pool.runs().size(); i++) runThere(pool.runs().get(i), "rules.pool.runs[" + i + "]");
            for (int i = 0; i < pool.gates().size(); i++)
                gateThere(pool.gates().get(i).gate(), "rules.pool.gates[" + i + "].gate");
            for (int i = 0; i < pool.hard().size(); i++) {
                String at = "rules.pool.hardGround[" + i + "]";
                RunStretch stretch = pool.hard().get(i);
                if (runThere(stretch.run(), at + ".run")) stationInside(stretch.run(), stretch.from(), at + ".from");
            }
            for (int i = 0; i < pool.climbables().size(); i++) {
                String at = "rules.pool.climbables[" + i + "]";
                Climbable thing = pool.climbables().get(i);
                if (runThere(thing.run(), at + ".run")) stationInside(thing.run(), thing.station(), at + ".station");
            }
        }
        for (int i = 0; i < job.rules().guards().size(); i++) {
            RunStretch stretch = job.rules().guards().get(i).at();
            String at = "rules.guards[" + i + "]";
            if (runThere(stretch.run(), at + ".run")) stationInside(stretch.run(), stretch.from(), at + ".from");
        }
        for (int i = 0; i < job.rules().keeps().size(); i++) {
            List<String> runs = job.rules().keeps().get(i).runs();
            for (int j = 0; j < runs.size(); j++) runThere(runs.get(j), "rules.keeps[" + i + "].runs[" + j + "]");
        }
        for (int i = 0; i < job.rules().accessible().size(); i++)
            gateThere(job.rules().accessible().get(i).gate(), "rules.accessible[" + i + "].gate");
    }

    private void gateThere(String id, String field) {
        List<String> gates = new ArrayList<>();
        for (Gate gate : job.gates()) gates.add(gate.id());
        if (id.isEmpty() || gates.contains(id) || unfinished.contains(id)) return;
        refuse(field, "there is no gate " + id, nearest(id, gates, "name a gate of this job"));
    }

    private void builds() {
        for (RunBuild build : job.builds().runs()) post(build.post(), "builds." + build.run() + ".post");
        for (GateBuild build : job.builds().gates()) {
            String at = "builds." + build.gate();
            section(build.frame(), at + ".frame");
            post(build.hingePost(), at + ".hingePost");
            post(build.latchPost(), at + ".latchPost");
        }
    }

    private void post(Stated<String> pinned, String field) {
        Optional<String> id = pinned.value();
        if (id.isEmpty() || catalogue.post(id.get()).isPresent()) return;
        List<String> known = new ArrayList<>();
        for (Section section : catalogue.sections()) known.add(section.id());
        for (WoodPost post : catalogue.woodPosts()) known.add(post.id());
        refuse(
                field,
                "the catalogue has no such section",
                nearest(id.get(), known, "write the id of one, such as " + example(known)));
    }

    void section(Stated<String> pinned, String field) {
        Optional<String> id = pinned.value();
        if (id.isEmpty() || catalogue.section(id.get()).isPresent()) return;
        List<String> known = new ArrayList<>();
        for (Section section : catalogue.sections()) known.add(section.id());
        refuse(
                field,
                "the catalogue has no such section",
                nearest(id.get(), known, "write the id of one, such as " + example(known)));
    }

    private static String example(List<String> known) {
        return known.isEmpty() ? "TUBE-2x2x0.083" : known.get(0);
    }

    Map<String, Length> runLengths() {
        return runLengths;
    }
}
