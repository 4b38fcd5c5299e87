package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.PullFit;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.job.FirstPull;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.section.PostStock;

/** What the first posts of a site showed when pulled: it takes the place of what the table presumes of the soil. */
record SitePulls(List<PullFit> fits, int unread) {
    static SitePulls of(Job job, Catalogue catalogue, SoilBand presumed) {
        PullFit.Kind kind = presumed.likely().match(growing -> PullFit.Kind.GROWING, constant -> PullFit.Kind.CONSTANT);
        List<PullFit> fits = new ArrayList<>();
        int unread = 0;
        for (FirstPull first : job.site().soil().numbers().pulls()) {
            Optional<PullFit> fit = catalogue
                    .post(first.post())
                    .flatMap(post -> PullFit.of(first.pull(), stiffness(post), first.depth(), kind));
            if (fit.isPresent()) fits.add(fit.get());
            else unread++;
        }
        return new SitePulls(fits, unread);
    }

    private static double stiffness(PostStock post) {
        return post.elasticModulus().psi() * Math.min(post.ixIn4(), post.iyIn4());
    }

    /** The softest of what was read, with its doubt; empty where nothing was. */
    Optional<SoilBand> band() {
        return fits.stream().map(PullFit::band).reduce((one, other) -> value(other) < value(one) ? other : one);
    }

    private static double value(SoilBand band) {
        return band.likely()
                .match(
                        growing -> growing.rate().poundsPerCubicInch(),
                        constant -> constant.perLength().psi());
    }

    List<Finding> findings() {
        Basis basis = Basis.judgement("rigid pier in elastic soil, the softest pull of the site");
        List<Finding> findings = new ArrayList<>();
        band().ifPresent(band -> findings.add(Checked.note(
                "soil.pulled",
                Severity.PASS,
                "site",
                "The first post on the site was pulled: "
                        + band.likely()
                                .match(
                                        growing -> "n_h is "
                                                + DecimalText.fixed(
                                                        growing.rate().poundsPerCubicInch(), 1) + " lb/in3",
                                        constant -> "k D is "
                                                + DecimalText.whole(
                                                        constant.perLength().psi()) + " psi")
                        + ", and takes the place of the guess.",
                basis)));
        if (unread > 0)
            findings.add(Checked.note(
                    "soil.readings",
                    Severity.CAUTION,
                    "site",
                    "A pull on the first post could not be read: its readings fit no post that turns in soil, or nobody knows the post. It counts for nothing.",
                    basis));
        if (fits.stream().anyMatch(PullFit::isLoose))
            findings.add(Checked.note(
                    "soil.loose-plug",
                    Severity.CAUTION,
                    "site",
                    "Of what the pull moved the first post, more than a tenth stayed: its concrete was loose or green. Pull it again when it has set.",
                    Basis.commonPractice("10 % left over")));
        return findings;
    }
}
