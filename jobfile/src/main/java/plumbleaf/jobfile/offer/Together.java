package plumbleaf.jobfile.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.OfferKind;
import plumbleaf.engine.job.OfferOption;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.job.JobFile;

/**
 * Several options of a job ticked together: one design of all their changes, not a sum of prices. What they cost together differs from the sum of each by itself where
 * they share a trip, a bar or a bag; {@code total = base + sum of each alone + together}, to the cent.
 *
 * @param ticked in the order of the job
 * @param base what the job itself comes to
 * @param alone each as it was priced by itself, in the order of {@code ticked}
 * @param design of all of them; none where they cannot be built together
 * @param reason why they cannot; empty where they can
 */
public record Together(
        List<OfferOption> ticked, Money base, List<Money> alone, Optional<Design> design, String reason) {
    public Together {
        ticked = List.copyOf(ticked);
        alone = List.copyOf(alone);
    }

    /** Whether they can be built, and pass. */
    public boolean canBe() {
        return reason.isEmpty();
    }

    /** With tax; what the job itself comes to where they cannot be built. */
    public Money total() {
        return design.map(is -> is.quote().price().total()).orElse(base);
    }

    /** What being built together adds to, or takes off, the sum of each alone. */
    public Money together() {
        Money apart = base;
        for (Money each : alone) apart = apart.plus(each);
        return total().minus(apart);
    }

    /**
     * @param offers each option by itself, designed
     * @param ids of those ticked; one that the job has not is no tick
     * @param designer designs a job as the base was designed
     */
    public static Together of(
            Design base, Offers offers, List<String> ids, Catalogue catalogue, Function<Job, Design> designer) {
        List<Offered> chosen = offers.offered().stream()
                .filter(offered -> ids.contains(offered.option().id()))
                .toList();
        List<OfferOption> ticked = chosen.stream().map(Offered::option).toList();
        Money plain = base.quote().price().total();
        List<Money> alone =
                chosen.stream().map(offered -> offered.difference().price()).toList();
        if (ticked.isEmpty()) return new Together(ticked, plain, alone, Optional.of(base), "");
        if (chosen.size() == 1)
            return judged(ticked, plain, alone, chosen.get(0).design());
        String clash = clash(ticked);
        if (!clash.isEmpty()) return new Together(ticked, plain, alone, Optional.empty(), clash);
        List<JobEdit> edits = new ArrayList<>();
        for (OfferOption option : ticked) edits.addAll(edits(option));
        return JobEdit.all(JobFile.tree(base.job()), edits)
                .match(
                        read -> JobFile.read("the job", read.is(), catalogue)
                                .match(
                                        good -> judged(ticked, plain, alone, designer.apply(good.is())),
                                        bad -> refused(ticked, plain, alone, bad.all())),
                        no -> new Together(
                                ticked,
                                plain,
                                alone,
                                Optional.empty(),
                                "One takes out what another changes: " + no.problem()));
    }

    private static Together judged(List<OfferOption> ticked, Money base, List<Money> alone, Design design) {
        if (design.verdict() != Verdict.FAILS) return new Together(ticked, base, alone, Optional.of(design), "");
        String why = design.findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .map(Finding::message)
                .findFirst()
                .orElse("a check fails");
        return new Together(
                ticked,
                base,
                alone,
                Optional.empty(),
                (ticked.size() == 1 ? "It does" : "Together they do") + " not pass: " + why);
    }

    private static Together refused(List<OfferOption> ticked, Money base, List<Money> alone, List<InputError> errors) {
        return new Together(
                ticked,
                base,
                alone,
                Optional.empty(),
                "Together they make no job: " + errors.get(0).problem());
    }

    /** Why two of them exclude each other: two builds of the whole job, or two values for one place. */
    private static String clash(List<OfferOption> ticked) {
        for (int i = 0; i < ticked.size(); i++) {
            for (int k = i + 1; k < ticked.size(); k++) {
                OfferOption one = ticked.get(i);
                OfferOption other = ticked.get(k);
                String names = one.name() + " and " + other.name();
                if (one.kind() == OfferKind.BUILD && other.kind() == OfferKind.BUILD)
                    return names + " are each a build of the whole job: tick one of them";
                for (JobEdit edit : edits(one))
                    for (JobEdit against : edits(other))
                        if (meet(edit, against))
                            return names + " both change " + edit.path() + ", to different things: tick one of them";
            }
        }
        return "";
    }

    /** Whether both say something else of the same place, or one of what lies in the other's. */
    private static boolean meet(JobEdit one, JobEdit other) {
        if (one.path().equals(other.path())) return !one.value().equals(other.value());
        return inside(one.path(), other.path()) || inside(other.path(), one.path());
    }

    private static boolean inside(String outer, String inner) {
        return inner.startsWith(outer + ".") || inner.startsWith(outer + "[");
    }

    private static List<JobEdit> edits(OfferOption option) {
        return option.edits().stream()
                .flatMap(text -> JobEdit.read(text).value().stream())
                .toList();
    }
}
