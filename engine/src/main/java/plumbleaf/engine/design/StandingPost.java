package plumbleaf.engine.design;

import java.util.Comparator;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.support.Support;

/** What a post that stands already is likely made of, by a tape round it. */
final class StandingPost {
    /** A tape round a galvanized post reads within this share. Judgement. */
    private static final double NEAR = 0.03;

    private StandingPost() {}

    /** The lightest round post of that girth: its wall cannot be seen. Empty where nothing stands, or nobody measured it. */
    static Optional<Section> of(Support support, Catalogue catalogue) {
        return support.match(
                footing -> Optional.empty(),
                driven -> Optional.empty(),
                plate -> Optional.empty(),
                socket -> Optional.empty(),
                wall -> Optional.empty(),
                existing -> existing.girth().isZero() ? Optional.empty() : byGirth(existing.girth(), catalogue));
    }

    /** What a post that stands is taken for in a search: what its girth tells, or the usual gate post where nobody measured it. Nobody chooses a post that is there. */
    static Optional<PostStock> taken(Support support, Catalogue catalogue) {
        boolean stands = support.match(
                footing -> false, driven -> false, plate -> false, socket -> false, wall -> false, existing -> true);
        if (!stands) return Optional.empty();
        return of(support, catalogue).<PostStock>map(is -> is).or(() -> catalogue.post(UsualBuilds.GATE_POST));
    }

    /** Outside diameter from girth: {@code G / pi}. Source: geometry. Check: StandingPostTest (5.97 in. is 1.9 in. and so on). */
    static Length diameter(Length girth) {
        return girth.times(1 / Math.PI);
    }

    private static Optional<Section> byGirth(Length girth, Catalogue catalogue) {
        double wanted = diameter(girth).inches();
        return catalogue.sections().stream()
                .filter(Section::isRound)
                .filter(section -> Math.abs(section.depth().inches() - wanted) <= NEAR * wanted)
                .min(Comparator.comparingDouble(Section::ixIn4).thenComparing(Section::id));
    }
}
