package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.AccessibleWay;
import plumbleaf.engine.job.Building;
import plumbleaf.engine.job.Climbable;
import plumbleaf.engine.job.NearHouse;
import plumbleaf.engine.job.Overnight;
import plumbleaf.engine.job.PoolBarrier;
import plumbleaf.engine.job.PoolGateSaid;
import plumbleaf.engine.job.PropertyLine;
import plumbleaf.engine.job.RunStretch;
import plumbleaf.engine.job.SightTriangle;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code rules.pool}, {@code rules.sights}, {@code rules.accessible}, {@code rules.nearHouse}, {@code rules.overnight}. */
final class SiteRulesForm {
    private static final TextKind<Boolean> ANSWER =
            TextKind.oneOf("an answer", List.of(true, false), answer -> answer ? "yes" : "no");
    private static final TextKind<Boolean> SIDE =
            TextKind.oneOf("a side", List.of(true, false), inside -> inside ? "in" : "out");

    private static final TextKind<String> VOUCHED =
            TextKind.oneOf("who vouches for a line", List.of("pins", "survey", "owner"), who -> who);

    private SiteRulesForm() {}

    static List<PoolBarrier> pools(Fields pool) {
        if (!pool.there()) return List.of();
        List<RunStretch> hard = new ArrayList<>();
        for (Fields fields : pool.objects("hardGround")) hard.add(stretch(fields));
        List<Climbable> climbables = new ArrayList<>();
        for (Fields fields : pool.objects("climbables"))
            climbables.add(new Climbable(
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.needed("run", TextKind.WORDS, ""),
                    fields.needed("station", Words.STATION, Length.ZERO),
                    fields.needed("away", Words.ASIDE, Length.ZERO)));
        List<PoolGateSaid> gates = new ArrayList<>();
        for (Fields fields : pool.objects("gates"))
            gates.add(new PoolGateSaid(
                    fields.needed("gate", TextKind.WORDS, ""),
                    stated(fields.given("releaseHeight", Words.HEIGHT)),
                    stated(fields.given("releaseOnPoolSide", ANSWER)),
                    fields.flag("shielded"),
                    stated(fields.given("lockable", ANSWER)),
                    stated(fields.given("closer", ANSWER)),
                    stated(fields.given("inactiveFixed", ANSWER))));
        return List.of(new PoolBarrier(
                pool.values("runs", TextKind.WORDS),
                pool.assumed("side", SIDE, true, "the pool lies inside"),
                stated(pool.given("height", Words.HEIGHT)),
                pool.flag("lookedOutside"),
                hard,
                climbables,
                gates));
    }

    static RunStretch stretch(Fields fields) {
        RunStretch stretch = new RunStretch(
                fields.needed("run", TextKind.WORDS, ""),
                fields.needed("from", Words.STATION, Length.ZERO),
                fields.needed("to", Words.STATION, Length.feet(1)));
        if (stretch.from().compareTo(stretch.to()) >= 0)
            fields.refuse("to", "this is not beyond the near edge", "write the farther edge here");
        return stretch;
    }

    private static <T> Stated<T> stated(Optional<T> value) {
        return value.map(Stated::of).orElseGet(Stated::open);
    }

    static List<SightTriangle> sights(List<Fields> sights) {
        List<SightTriangle> triangles = new ArrayList<>();
        for (Fields fields : sights) {
            SightTriangle triangle = new SightTriangle(
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.needed("east", Words.PLAN, Offset.ZERO),
                    fields.needed("north", Words.PLAN, Offset.ZERO),
                    fields.needed("first", TextKind.ANGLE, Angle.ZERO),
                    fields.needed("firstLeg", Words.LEG, Length.feet(25)),
                    fields.needed("second", TextKind.ANGLE, Angle.degrees(90)),
                    fields.needed("secondLeg", Words.LEG, Length.feet(25)),
                    fields.assumed("height", Words.HEIGHT, Length.feet(3), "the most common limit of the places read"));
            double turn = Math.IEEEremainder(
                    triangle.first().radians() - triangle.second().radians(), Math.PI);
            if (fields.has("first") && fields.has("second") && Math.abs(turn) < 1e-3)
                fields.refuse("second", "both legs lie on one line", "write the bearing of the other leg");
            triangles.add(triangle);
        }
        return triangles;
    }

    static List<AccessibleWay> accessible(List<Fields> ways) {
        List<AccessibleWay> gates = new ArrayList<>();
        for (Fields fields : ways)
            gates.add(new AccessibleWay(
                    fields.needed("gate", TextKind.WORDS, ""),
                    stated(fields.given("smoothBottom", ANSWER)),
                    stated(fields.given("threshold", Words.RISE))));
        return gates;
    }

    static List<NearHouse> nearHouse(Fields near) {
        if (!near.there()) return List.of();
        List<Building> buildings = new ArrayList<>();
        for (Fields fields : near.objects("buildings")) {
            List<PlanPoint> corners = points(fields, "corners");
            if (corners.size() < 2)
                fields.refuse("corners", "a building needs two corners at least", "write the ends of its near wall");
            buildings.add(new Building(fields.needed("what", TextKind.WORDS, ""), corners));
        }
        return List.of(new NearHouse(
                near.assumed("strip", Words.BAY, Length.feet(5), "from memory, local wildfire rules"),
                near.flag("required"),
                buildings));
    }

    static List<PropertyLine> propertyLines(List<Fields> lines) {
        List<PropertyLine> all = new ArrayList<>();
        for (Fields fields : lines) {
            List<PlanPoint> points = points(fields, "points");
            if (points.size() < 2) fields.refuse("points", "a line needs two points at least", "write its ends");
            all.add(new PropertyLine(
                    fields.needed("what", TextKind.WORDS, ""),
                    stated(fields.given("certifiedBy", VOUCHED)),
                    fields.assumed("setback", Words.STATION, Length.inches(4), Words.CUSTOM),
                    points));
        }
        return all;
    }

    private static List<PlanPoint> points(Fields fields, String key) {
        List<PlanPoint> points = new ArrayList<>();
        for (Fields point : fields.objects(key))
            points.add(new PlanPoint(
                    point.needed("east", Words.PLAN, Offset.ZERO), point.needed("north", Words.PLAN, Offset.ZERO)));
        return points;
    }

    static List<Overnight> overnight(List<Fields> kept) {
        List<Overnight> all = new ArrayList<>();
        for (Fields fields : kept)
            all.add(new Overnight(
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.assumed("temporaryFence", Words.STATION, Length.ZERO, "nobody has said how long")));
        return all;
    }

    static void write(plumbleaf.engine.job.Rules rules, Entries out) {
        for (PoolBarrier pool : rules.pools()) out.object("pool", entries -> writePool(pool, entries));
        out.objects("sights", rules.sights(), SiteRulesForm::writeSight);
        out.objects(
                "accessible",
                rules.accessible(),
                (way, entries) -> entries.words("gate", way.gate())
                        .putIfAny("smoothBottom", ANSWER, way.smoothBottom().value())
                        .putIfAny("threshold", TextKind.LENGTH, way.threshold().value()));
        out.objects("propertyLines", rules.propertyLines(), (line, entries) -> {
            entries.words("what", line.what())
                    .putIfAny("certifiedBy", VOUCHED, line.certifiedBy().value())
                    .put("setback", TextKind.LENGTH, line.setback());
            entries.objects(
                    "points",
                    line.points(),
                    (point, inner) -> inner.put("east", TextKind.OFFSET, point.east())
                            .put("north", TextKind.OFFSET, point.north()));
        });
        for (NearHouse near : rules.nearHouse()) out.object("nearHouse", entries -> writeNear(near, entries));
        out.objects(
                "overnight",
                rules.overnight(),
                (kept, entries) -> entries.words("what", kept.what())
                        .put("temporaryFence", TextKind.LENGTH, kept.temporaryFence()));
    }

    private static void writePool(PoolBarrier pool, Entries out) {
        out.values("runs", TextKind.WORDS, pool.runs())
                .put("side", SIDE, pool.poolInside())
                .putIfAny("height", TextKind.LENGTH, pool.height().value())
                .flag("lookedOutside", pool.lookedOutside());
        out.objects(
                "hardGround",
                pool.hard(),
                (stretch, entries) -> entries.words("run", stretch.run())
                        .put("from", TextKind.LENGTH, stretch.from())
                        .put("to", TextKind.LENGTH, stretch.to()));
        out.objects(
                "climbables",
                pool.climbables(),
                (thing, entries) -> entries.words("what", thing.what())
                        .words("run", thing.run())
                        .put("station", TextKind.LENGTH, thing.station())
                        .put("away", TextKind.LENGTH, thing.away()));
        out.objects(
                "gates",
                pool.gates(),
                (gate, entries) -> entries.words("gate", gate.gate())
                        .putIfAny(
                                "releaseHeight",
                                TextKind.LENGTH,
                                gate.releaseHeight().value())
                        .putIfAny(
                                "releaseOnPoolSide",
                                ANSWER,
                                gate.releaseOnPoolSide().value())
                        .flag("shielded", gate.shielded())
                        .putIfAny("lockable", ANSWER, gate.lockable().value())
                        .putIfAny("closer", ANSWER, gate.closer().value())
                        .putIfAny("inactiveFixed", ANSWER, gate.inactiveFixed().value()));
    }

    private static void writeSight(SightTriangle sight, Entries out) {
        out.words("what", sight.what())
                .put("east", TextKind.OFFSET, sight.east())
                .put("north", TextKind.OFFSET, sight.north())
                .put("first", TextKind.ANGLE, sight.first())
                .put("firstLeg", TextKind.LENGTH, sight.firstLeg())
                .put("second", TextKind.ANGLE, sight.second())
                .put("secondLeg", TextKind.LENGTH, sight.secondLeg())
                .put("height", TextKind.LENGTH, sight.height());
    }

    private static void writeNear(NearHouse near, Entries out) {
        out.put("strip", TextKind.LENGTH, near.strip()).flag("required", near.required());
        out.objects("buildings", near.buildings(), (building, entries) -> {
            entries.words("what", building.what());
            entries.objects(
                    "corners",
                    building.corners(),
                    (corner, inner) -> inner.put("east", TextKind.OFFSET, corner.east())
                            .put("north", TextKind.OFFSET, corner.north()));
        });
    }
}
