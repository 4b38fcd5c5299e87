package plumbleaf.engine.strength;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Speed;

/**
 * The gust, at the standard's 33 ft, at which the first part of a build reaches its allowable and the first its expected ultimate: printed with every build
 * and never hidden. Wind pressure grows with the square of the speed, so {@code V = V0 sqrt(capacity left / wind demand)}.
 * Source: ASCE 7-16 26.10 (q with V2); the expected ultimates are stated where they are computed. Check: RatedGustCheck.
 *
 * @param parts each part with its own gust, that of its worst case, in the order of the build
 */
public record RatedGust(Speed allowable, String allowableLink, Speed ultimate, String ultimateLink, List<Part> parts) {
    public RatedGust {
        parts = List.copyOf(parts);
    }

    /**
     * One part.
     *
     * @param allowable gust at which it reaches its allowable
     * @param ultimate gust at which it is expected to give
     */
    public record Part(String link, Speed allowable, Speed ultimate) {
        /** Whether no wind reaches it. */
        public boolean isNotTroubled() {
            return allowable.mph() >= NO_LIMIT_MPH;
        }

        private Part lesser(Part other) {
            return new Part(
                    link,
                    allowable.compareTo(other.allowable) <= 0 ? allowable : other.allowable,
                    ultimate.compareTo(other.ultimate) <= 0 ? ultimate : other.ultimate);
        }
    }

    /** Faster than any wind; stands for a part that the wind does not reach. */
    private static final double NO_LIMIT_MPH = 500;

    /**
     * @param at the speed the parts' wind was computed for
     * @param parts not empty
     */
    public static RatedGust of(Speed at, List<GustPart> parts) {
        GustPart first = parts.get(0);
        GustPart last = parts.get(0);
        for (GustPart part : parts) {
            if (part.timesToAllowable() < first.timesToAllowable()) first = part;
            if (part.timesToUltimate() < last.timesToUltimate()) last = part;
        }
        return new RatedGust(
                speed(at, first.timesToAllowable()),
                first.link(),
                speed(at, last.timesToUltimate()),
                last.link(),
                each(parts.stream()
                        .map(part -> new Part(part.link(), allowableOf(at, part), ultimateOf(at, part)))
                        .toList()));
    }

    /** Of two builds that stand together: the first to reach each limit. */
    public RatedGust lesser(RatedGust other) {
        boolean allowableHere = allowable.compareTo(other.allowable) <= 0;
        boolean ultimateHere = ultimate.compareTo(other.ultimate) <= 0;
        return new RatedGust(
                allowableHere ? allowable : other.allowable,
                allowableHere ? allowableLink : other.allowableLink,
                ultimateHere ? ultimate : other.ultimate,
                ultimateHere ? ultimateLink : other.ultimateLink,
                each(Stream.concat(parts.stream(), other.parts.stream()).toList()));
    }

    /** Of a part that was looked at in several cases, its worst. */
    private static List<Part> each(List<Part> all) {
        Map<String, Part> worst = new LinkedHashMap<>();
        for (Part part : all) worst.merge(part.link(), part, Part::lesser);
        return List.copyOf(worst.values());
    }

    /** The same without its parts: a yard of miles names the weakest alone. */
    public RatedGust alone() {
        return new RatedGust(allowable, allowableLink, ultimate, ultimateLink, List.of());
    }

    /** The gust of one part alone, to its allowable. */
    public static Speed allowableOf(Speed at, GustPart part) {
        return speed(at, part.timesToAllowable());
    }

    /** The gust of one part alone, to its expected ultimate. */
    public static Speed ultimateOf(Speed at, GustPart part) {
        return speed(at, part.timesToUltimate());
    }

    private static Speed speed(Speed at, double times) {
        return Speed.mph(Math.min(NO_LIMIT_MPH, at.mph() * Math.sqrt(times)));
    }

    /** {@code 50 mph (footing F3) to its allowable, 83 mph (footing F3) to where it is expected to give}. */
    public String words() {
        return DecimalText.whole(allowable.mph()) + " mph (" + allowableLink + ") to its allowable, "
                + DecimalText.whole(ultimate.mph()) + " mph (" + ultimateLink + ") to where it is expected to give";
    }
}
