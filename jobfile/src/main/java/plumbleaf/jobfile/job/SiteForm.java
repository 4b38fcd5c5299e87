package plumbleaf.jobfile.job;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.engine.job.Access;
import plumbleaf.engine.job.Arrival;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.FirstPull;
import plumbleaf.engine.job.Frost;
import plumbleaf.engine.job.FrostMonths;
import plumbleaf.engine.job.RiskCategory;
import plumbleaf.engine.job.Site;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilNumbers;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code site}: who, where, how it is judged, wind, frost and soil. */
final class SiteForm {
    private static final Length FROST = Length.inches(30);
    /** Less is no basic wind speed of any map, but a slip of the pen. Judgement. */
    private static final Speed CALMEST = Speed.mph(30);

    private static final Length LOOSE_TOP = Length.inches(6);

    private static final TextKind<Month> MONTH = TextKind.oneOf(
            "a month",
            List.of(Month.values()),
            month -> month.name().substring(0, 3).toLowerCase(Locale.ROOT));

    private SiteForm() {}

    static Site read(Fields site) {
        String customer = site.words("customer");
        String phone = site.words("phone");
        String address = site.words("address");
        List<Use> uses = uses(site);
        boolean forced = uses.contains(Use.POOL)
                || uses.contains(Use.GUARD)
                || uses.contains(Use.POWERED)
                || uses.contains(Use.PUBLIC_WAY);
        DesignBasis basis = site.assumed(
                "basis",
                Words.BASIS,
                forced ? DesignBasis.ENGINEERED : DesignBasis.CUSTOMARY,
                forced ? "the use of the place asks for it" : Words.CUSTOM);
        return new Site(
                customer,
                phone,
                address,
                basis,
                uses,
                wind(site.object("wind"), uses),
                frost(site.object("frost")),
                soil(site.object("soil")),
                access(site.object("access")),
                Open.of(site.given("start", TextKind.DATE)));
    }

    /** In the order of the enumeration, each once. */
    private static List<Use> uses(Fields site) {
        if (!site.has("uses")) site.leaveOut("uses", "walk", Words.CUSTOM);
        List<Use> named = site.values("uses", Words.USE);
        List<Use> ordered = new ArrayList<>();
        for (Use use : Use.values()) {
            if (named.contains(use)) ordered.add(use);
        }
        return ordered.isEmpty() ? List.of(Use.WALK) : ordered;
    }

    private static SiteWind wind(Fields wind, List<Use> uses) {
        boolean publicWay = uses.contains(Use.PUBLIC_WAY);
        Speed speed = wind.assumed("speed", TextKind.SPEED, Speed.mph(115), "judgement; ask the building office");
        if (speed.compareTo(CALMEST) < 0)
            wind.refuse(
                    "speed",
                    "no place is as calm as this",
                    "write the basic wind speed that the building office names, such as 105 mph");
        return new SiteWind(
                speed,
                wind.assumed("exposure", Words.EXPOSURE, Exposure.C, "open country, on the safe side"),
                wind.assumed("edition", Words.EDITION, WindEdition.ASCE_7_16, Words.JUDGED),
                wind.assumed(
                        "risk",
                        Words.RISK,
                        publicWay ? RiskCategory.II : RiskCategory.I,
                        publicWay ? "beside a public way" : "a fence away from the public"),
                wind.assumedNumber("topographic", 1, 4, 1, "level country: no hill or escarpment"),
                wind.assumedNumber("elevation", 0.5, 1.1, 1, "sea level, on the safe side"));
    }

    /** Widths are not assumed aloud: they matter only where a way is said to be narrow. */
    private static Access access(Fields access) {
        return new Access(
                Open.of(access.given("passage", Words.OPENING)),
                access.given("machine", Words.OPENING).orElse(Access.USUAL_MACHINE),
                access.given("carry", Words.ASIDE).orElse(Length.ZERO),
                new Arrival(access.words("parking"), access.words("dogs"), access.words("services")));
    }

    private static void writeAccess(Access access, Entries out) {
        out.putIfAny("passage", TextKind.LENGTH, access.passage().value())
                .putIfAny(
                        "machine",
                        TextKind.LENGTH,
                        Optional.of(access.machine()).filter(is -> !is.equals(Access.USUAL_MACHINE)))
                .putIfAny("carry", TextKind.LENGTH, met(access.carry()))
                .words("parking", access.arrival().parking())
                .words("dogs", access.arrival().dogs())
                .words("services", access.arrival().services());
    }

    private static Frost frost(Fields frost) {
        Length depth = frost.assumed("depth", Words.DOWN, FROST, "judgement; ask the building office");
        Optional<Month> from = frost.given("from", MONTH);
        Optional<Month> through = frost.given("through", MONTH);
        Optional<Month> first = from.or(() -> through);
        return new Frost(
                depth,
                frost.words("source"),
                first.map(is -> FrostMonths.of(is, through.orElse(is))).orElse(FrostMonths.UNSAID));
    }

    private static Soil soil(Fields soil) {
        SoilKind kind = soil.assumed("kind", Words.SOIL, SoilKind.CLAY, Words.JUDGED);
        SoilState state = soil.assumed("state", Words.STATE, usualState(kind), Words.JUDGED);
        if (soil.has("state") && !statesOf(kind).contains(state))
            soil.refuse(
                    "state",
                    kind.key() + " is not " + state.key(),
                    "write one of "
                            + String.join(
                                    ", ",
                                    statesOf(kind).stream().map(SoilState::key).toList()));
        return new Soil(
                kind,
                state,
                soil.flag("belowWater"),
                soil.assumedCount("class", 1, 5, usualClass(kind), "IBC Table 1806.2 by the kind of soil, from memory"),
                Open.of(soil.given("nh", TextKind.SOIL_RATE)),
                soil.assumed("looseTop", Words.DOWN, LOOSE_TOP, Words.CUSTOM),
                soil.assumed("slope", TextKind.SLOPE, Slope.ZERO, "taken as level"),
                numbers(soil));
    }

    private static SoilNumbers numbers(Fields soil) {
        List<FirstPull> pulls = new ArrayList<>();
        for (Fields pull : soil.objects("pulls"))
            pulls.add(new FirstPull(
                    PullForm.read(pull),
                    pull.needed("post", TextKind.WORDS, ""),
                    pull.needed("depth", Words.DEPTH, Length.feet(3))));
        return new SoilNumbers(
                Open.of(soil.given("su", TextKind.PRESSURE)),
                Open.of(soil.given("lateralPerFoot", TextKind.PRESSURE)),
                soil.given("besideDrop", Words.DOWN).orElse(Length.ZERO),
                soil.given("rockAt", Words.DOWN).orElse(Length.ZERO),
                pulls);
    }

    private static SoilState usualState(SoilKind kind) {
        return switch (kind) {
            case CLAY, SILT -> SoilState.FIRM;
            case SAND, GRAVEL, ROCK, FILL -> SoilState.MEDIUM;
        };
    }

    private static List<SoilState> statesOf(SoilKind kind) {
        return switch (kind) {
            case CLAY, SILT -> List.of(SoilState.SOFT, SoilState.FIRM, SoilState.STIFF);
            case SAND, GRAVEL -> List.of(SoilState.LOOSE, SoilState.MEDIUM, SoilState.DENSE);
            case ROCK, FILL -> List.of(SoilState.values());
        };
    }

    /** Sedimentary rock 2, sandy gravel 3, sands 4, clays and silts 5; fill has none of its own and takes the weakest. */
    private static int usualClass(SoilKind kind) {
        return switch (kind) {
            case ROCK -> 2;
            case GRAVEL -> 3;
            case SAND -> 4;
            case CLAY, SILT, FILL -> 5;
        };
    }

    static void write(Site site, Entries out) {
        out.words("customer", site.customer())
                .words("phone", site.phone())
                .words("address", site.address())
                .put("basis", Words.BASIS, site.basis())
                .putIfAny("start", TextKind.DATE, site.start().value())
                .values("uses", Words.USE, site.uses());
        out.object(
                "wind",
                wind -> wind.put("speed", TextKind.SPEED, site.wind().speed())
                        .put("exposure", Words.EXPOSURE, site.wind().exposure())
                        .put("edition", Words.EDITION, site.wind().edition())
                        .put("risk", Words.RISK, site.wind().risk())
                        .number("topographic", site.wind().topographic())
                        .number("elevation", site.wind().elevation()));
        out.object(
                "frost",
                frost -> frost.put("depth", TextKind.LENGTH, site.frost().depth())
                        .words("source", site.frost().source())
                        .putIfAny("from", MONTH, months(site).stream().findFirst())
                        .putIfAny("through", MONTH, months(site).stream().reduce((one, next) -> next)));
        out.object("access", access -> writeAccess(site.access(), access));
        Soil soil = site.soil();
        out.object(
                "soil",
                entries -> entries.put("kind", Words.SOIL, soil.kind())
                        .put("state", Words.STATE, soil.state())
                        .flag("belowWater", soil.belowWater())
                        .count("class", soil.ibcClass())
                        .putIfAny("nh", TextKind.SOIL_RATE, soil.rate().value())
                        .put("looseTop", TextKind.LENGTH, soil.looseTop())
                        .put("slope", TextKind.SLOPE, soil.slope())
                        .putIfAny(
                                "su",
                                TextKind.PRESSURE,
                                soil.numbers().undrained().value())
                        .putIfAny(
                                "lateralPerFoot",
                                TextKind.PRESSURE,
                                soil.numbers().lateralPerFoot().value())
                        .putIfAny(
                                "besideDrop",
                                TextKind.LENGTH,
                                met(soil.numbers().besideDrop()))
                        .putIfAny("rockAt", TextKind.LENGTH, met(soil.numbers().rockAt()))
                        .objects("pulls", soil.numbers().pulls(), SiteForm::writePull));
    }

    private static List<Month> months(Site site) {
        return site.frost().months().months();
    }

    /** Nothing is written of what nobody met. */
    private static Optional<Length> met(Length length) {
        return Optional.of(length).filter(is -> !is.isZero());
    }

    private static void writePull(FirstPull pull, Entries out) {
        PullForm.write(pull.pull(), out);
        out.put("post", TextKind.WORDS, pull.post()).put("depth", TextKind.LENGTH, pull.depth());
    }
}
