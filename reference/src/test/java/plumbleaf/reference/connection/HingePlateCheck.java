package plumbleaf.reference.connection;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;
import plumbleaf.engine.strength.HingePlate;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * An upright plate pulling on a round or square wall: strength, end distance, chord stress, tab moment, punching, bolt bearing.
 * Source: AISC 360-22 Tables K2.1 and clauses K1.3, K1.4, J7(a); AISC 360-10 K1-12 as in KDS 14 31 25; a public connection note (CX05, printed); engineering
 * forum thread 475967 (CX06, CX07, printed).
 * Tolerance: 0.1 to 0.2 %, the printed digits. Rows marked computed guard against slips, not against a misread formula.
 */
class HingePlateCheck {
    private static final Length FAR = Length.inches(100);

    private static Section post(Shape shape, double sizeIn, double wallIn, double fyKsi, double fuKsi) {
        TubeProperties made = shape == Shape.ROUND
                ? TubeProperties.round(Length.inches(sizeIn), Length.inches(wallIn))
                : TubeProperties.rectangular(Length.inches(sizeIn), Length.inches(sizeIn), Length.inches(wallIn));
        Length wall = Length.inches(wallIn);
        Length size = Length.inches(sizeIn);
        return new Section(
                "EXAMPLE",
                "tube",
                "example",
                shape,
                size,
                size,
                wall,
                wall,
                wall,
                Force.pounds(1),
                made.areaIn2(),
                made.ixIn4(),
                made.sxIn3(),
                made.zxIn3(),
                made.iyIn4(),
                made.syIn3(),
                made.zyIn3(),
                made.jIn4(),
                Stress.ksi(fyKsi),
                Stress.ksi(fuKsi),
                "looked-up",
                "example",
                "looked-up");
    }

    private static double kips(Force force) {
        return force.pounds() / 1000;
    }

    @Test
    void plateOnARoundPost() {
        Vector vector = Vectors.one("connection", "CX01");
        Section post = post(Shape.ROUND, vector.in("D_in"), vector.in("t_in"), vector.in("Fy_ksi"), 58);
        HingePlate plate = new HingePlate(Length.inches(vector.in("lb_in")), Length.inches(0.25), FAR);
        vector.check("Rn_kip", kips(plate.nominal(post, vector.in("Qf"))));
        vector.check("Ra_kip", kips(plate.allowable(post, vector.in("Qf"))));
        vector.check("Mn_ip_kipin", plate.nominalMomentInPlane(post, 1).poundInches() / 1000);
        Vector thin = Vectors.one("connection", "CX02");
        double wall = thin.in("t_nominal_in") * thin.in("wall_factor");
        thin.check("t_in", wall);
        Section thinPost = post(Shape.ROUND, thin.in("D_in"), wall, thin.in("Fy_ksi"), 58);
        thin.check("Ra_kip", kips(plate.allowable(thinPost, 1)));
    }

    @Test
    void plateOnASquarePost() {
        Vector vector = Vectors.one("connection", "CX03");
        Section post = post(Shape.SQUARE, vector.in("B_in"), vector.in("t_in"), vector.in("Fy_ksi"), 58);
        HingePlate plate = new HingePlate(Length.inches(vector.in("lb_in")), Length.inches(vector.in("tp_in")), FAR);
        vector.check("Rn_kip", kips(plate.nominal(post, 1)));
        vector.check("Ra_kip", kips(plate.allowable(post, 1)));
    }

    @Test
    void chordStress() {
        Vector printed = Vectors.one("connection", "CX05");
        printed.check("Qf_2022", HingePlate.chordStress(printed.in("U")));
        Vector vector = Vectors.one("connection", "CX04");
        vector.check("Qf_2022", HingePlate.chordStress(vector.in("U")));
        Section post = post(Shape.SQUARE, vector.in("B_in"), vector.in("t_in"), vector.in("Fy_ksi"), 58);
        HingePlate plate = new HingePlate(Length.inches(vector.in("lb_in")), Length.inches(vector.in("tp_in")), FAR);
        vector.check("Ra_2022_kip", kips(plate.allowable(post, HingePlate.chordStress(vector.in("U")))));
    }

    @Test
    void tabMomentAndPunching() {
        Vector tab = Vectors.one("connection", "CX06");
        Section post = post(Shape.SQUARE, tab.in("B_in"), tab.in("t_in"), tab.in("Fy_ksi"), 58);
        HingePlate plate = new HingePlate(Length.inches(tab.in("lb_in")), Length.inches(tab.in("tp_in")), FAR);
        tab.check("Ma_kipin", plate.nominalMomentOnSquare(post).poundInches() / tab.in("omega") / 1000);
        Vector punch = Vectors.one("connection", "CX07");
        Section wall = post(Shape.SQUARE, 8, punch.in("t_in"), 46, punch.in("Fu_ksi"));
        HingePlate tall = new HingePlate(Length.inches(punch.in("lp_in")), Length.inches(0.25), FAR);
        punch.check("Ma_kipin", tall.nominalPunchingMoment(wall).poundInches() / punch.in("omega") / 1000);
    }

    @Test
    void endDistanceHalvesTheStrength() {
        Vector round = Vectors.one("connection", "CX10");
        Section pipe = post(Shape.ROUND, round.in("D_in"), 0.154, 30, 48);
        HingePlate far = new HingePlate(Length.inches(3), Length.inches(round.in("tp_in")), FAR);
        round.check("lend_in", far.endDistance(pipe).inches());
        Vector square = Vectors.one("connection", "CX11");
        Section tube = post(Shape.SQUARE, square.in("B_in"), 0.12, 46, 58);
        square.check("lend_in", far.endDistance(tube).inches());
        HingePlate near = new HingePlate(Length.inches(3), Length.inches(square.in("tp_in")), Length.inches(1.8));
        assertThat(near.nominal(tube, 1).pounds())
                .isEqualTo(far.nominal(tube, 1).pounds() / 2);
    }

    @Test
    void boltBearing() {
        Vector vector = Vectors.one("connection", "CX12");
        Force bearing = HingePlate.boltBearing(
                Stress.ksi(vector.in("Fy_ksi")), Length.inches(vector.in("d_in")), Length.inches(vector.in("t_in")));
        vector.check("Ra_kip", kips(bearing) / vector.in("omega"));
    }
}
