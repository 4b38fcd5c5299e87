package plumbleaf.jobfile.job;

import java.util.List;
import plumbleaf.engine.ground.TapeLay;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.PacketPaper;
import plumbleaf.engine.job.RiskCategory;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;
import plumbleaf.engine.support.PostFeel;
import plumbleaf.engine.support.WallKind;
import plumbleaf.jobfile.input.TextKind;

/** The coded words of a job file, the sizes beyond which a slip of the pen is likelier than a wish, and the reasons that stand by assumed values. */
final class Words {
    static final TextKind<DesignBasis> BASIS =
            TextKind.oneOf("a design basis", List.of(DesignBasis.values()), DesignBasis::key);
    static final TextKind<PacketPaper> PACKET_PAPER =
            TextKind.oneOf("a paper", List.of(PacketPaper.values()), PacketPaper::key);
    static final TextKind<Use> USE = TextKind.oneOf("a use", List.of(Use.values()), Use::key);
    static final TextKind<Exposure> EXPOSURE =
            TextKind.oneOf("a wind exposure", List.of(Exposure.values()), Exposure::key);
    static final TextKind<WindEdition> EDITION =
            TextKind.oneOf("an edition of ASCE 7", List.of(WindEdition.values()), WindEdition::key);
    static final TextKind<RiskCategory> RISK =
            TextKind.oneOf("a risk category", List.of(RiskCategory.values()), RiskCategory::key);
    static final TextKind<SoilKind> SOIL = TextKind.oneOf("a kind of soil", List.of(SoilKind.values()), SoilKind::key);
    static final TextKind<SoilState> STATE =
            TextKind.oneOf("a state of the soil", List.of(SoilState.values()), SoilState::key);
    static final TextKind<Side> SIDE = TextKind.oneOf("a side", List.of(Side.values()), Side::key);
    static final TextKind<SwingWay> SWING = TextKind.oneOf("a way to swing", List.of(SwingWay.values()), SwingWay::key);
    static final TextKind<TapeLay> TAPE_LAY =
            TextKind.oneOf("a way to tape", List.of(TapeLay.LEVEL, TapeLay.SLOPE), TapeLay::key);
    static final TextKind<Taped> TAPED = TextKind.oneOf("a way to tape", List.of(Taped.values()), Taped::key);
    static final TextKind<Fit> FIT = TextKind.oneOf("a fit to the ground", List.of(Fit.values()), Fit::key);
    static final TextKind<FinishedFace> FACE =
            TextKind.oneOf("a finished face", List.of(FinishedFace.values()), FinishedFace::key);
    static final TextKind<Joint> JOINT = TextKind.oneOf("a frame joint", List.of(Joint.values()), Joint::key);
    static final TextKind<MeasuredFrom> FROM =
            TextKind.oneOf("a side to measure from", List.of(MeasuredFrom.values()), MeasuredFrom::key);
    static final TextKind<WallKind> WALL = TextKind.oneOf("a kind of wall", List.of(WallKind.values()), WallKind::key);
    static final TextKind<PostFeel> FEEL =
            TextKind.oneOf("how a post feels", List.of(PostFeel.values()), PostFeel::key);
    static final TextKind<DisplayUnits> DISPLAY = TextKind.oneOf(
            "a system of units", List.of(DisplayUnits.values()), units -> units == DisplayUnits.US ? "us" : "metric");

    /** A turn from the leg before: {@code 90 deg left}; positive to the left. */
    static final TextKind<Angle> TURN = new TextKind<>("a turn", true, "90 deg left", Words::turn, Words::turnText);

    /** Of a rod, a wire or a sheet. */
    static final TextKind<Length> ROD = TextKind.sizeUpTo(Length.inches(2));

    static final TextKind<Length> LEG = TextKind.sizeUpTo(Length.feet(100 * 5280));
    static final TextKind<Length> HEIGHT = TextKind.sizeUpTo(Length.feet(16));
    static final TextKind<Length> BAY = TextKind.sizeUpTo(Length.feet(20));
    static final TextKind<Length> OPENING = TextKind.sizeUpTo(Length.feet(40));
    static final TextKind<Length> HOLE = TextKind.sizeUpTo(Length.feet(6));
    static final TextKind<Length> DEPTH = TextKind.sizeUpTo(Length.feet(20));

    static final TextKind<Length> STATION = TextKind.lengthUpTo(Length.feet(100 * 5280));
    static final TextKind<Length> RISE = TextKind.lengthUpTo(Length.feet(100));
    static final TextKind<Length> ASIDE = TextKind.lengthUpTo(Length.feet(5280));
    static final TextKind<Offset> ELEVATION = TextKind.offsetUpTo(Length.feet(30_000));
    static final TextKind<Offset> PLAN = TextKind.offsetUpTo(Length.feet(10 * 5280));
    static final TextKind<Length> GAP = TextKind.lengthUpTo(Length.feet(2));

    /** More ice than this has not been seen on a fence. Judgement. */
    static final TextKind<Length> ICE = TextKind.lengthUpTo(Length.inches(4));

    static final TextKind<Length> SPACE = TextKind.sizeUpTo(Length.feet(2));
    static final TextKind<Length> DOWN = TextKind.lengthUpTo(Length.feet(12));
    static final TextKind<Offset> PLUMB = TextKind.offsetUpTo(Length.feet(1));

    static final String CUSTOM = "common practice, no source";
    static final String JUDGED = "judgement";
    static final String ORDER = "numbered in the order of the file";

    private Words() {}

    private static Parsed<Angle> turn(String text) {
        String plain = text.strip();
        boolean left = plain.endsWith("left");
        boolean right = plain.endsWith("right");
        String size = left || right
                ? plain.substring(0, plain.length() - (left ? 4 : 5)).strip()
                : plain;
        return TextKind.ANGLE.read().apply(size).then(angle -> sided(angle, left, right));
    }

    private static Parsed<Angle> sided(Angle angle, boolean left, boolean right) {
        String cure = "write 90 deg left or 90 deg right";
        if (!left && !right && !angle.isZero()) return new Refused<>("a turn needs its side", cure);
        if (angle.radians() < 0) return new Refused<>("a turn has a side, not a sign", cure);
        if (angle.radians() >= Math.PI) return new Refused<>("a turn is less than 180 deg", cure);
        return new Read<>(right ? new Angle(-angle.radians()) : angle);
    }

    private static String turnText(Angle angle) {
        String size = TextKind.ANGLE.write().apply(new Angle(Math.abs(angle.radians())));
        return angle.isZero() ? size : size + (angle.radians() > 0 ? " left" : " right");
    }
}
