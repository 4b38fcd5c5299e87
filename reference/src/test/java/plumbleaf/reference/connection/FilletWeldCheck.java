package plumbleaf.reference.connection;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.strength.FilletWeld;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Fillets, the walls they lie on, and the sheet rules for tube of no tube standard.
 * Source: AISC Design Examples J.2 (S12); AISC Design Guide 24 Example 5.1 (S13); AISC 360-22 J2.4, J4.2 (CX13); NSR-10 F.4.5.2, the adoption of AISI S100
 * (CX14 to CX16).
 * Tolerance: 0.1 to 0.4 %, the printed digits.
 */
class FilletWeldCheck {
    private static FilletWeld weld(double legIn, double electrodeKsi) {
        return new FilletWeld(Length.inches(legIn), Stress.ksi(electrodeKsi));
    }

    /** Load at 60 degrees, two sides: 1.2 D + 1.6 L over 0.75 of the weld. */
    @Test
    void loadedAtAnAngle() {
        Vector vector = Vectors.one("connection", "S12");
        double factored = 1.2 * vector.in("D_kip") + 1.6 * vector.in("L_kip");
        double perInch = 0.75
                * weld(vector.in("leg_in"), vector.in("electrode_ksi"))
                        .nominalPerInch()
                        .pounds()
                / 1000
                * FilletWeld.directionFactor(vector.in("angle_deg"));
        vector.check("length_in", factored / (vector.in("sides") * perInch));
    }

    /** Two lengths of stem weld, in load and resistance factors. */
    @Test
    void stemWeldOfACapPlate() {
        Vector vector = Vectors.one("connection", "S13");
        double perInch = vector.in("phi")
                * weld(vector.in("leg_in"), vector.in("electrode_ksi"))
                        .nominalPerInch()
                        .pounds()
                / 1000;
        vector.check("phiRn_stem_kip", 2 * vector.in("stem_length_in") * perInch);
    }

    @Test
    void theWallGoverns() {
        Vector vector = Vectors.one("connection", "CX13");
        FilletWeld weld = weld(vector.in("w_in"), vector.in("Fexx_ksi"));
        Stress ultimate = Stress.ksi(vector.in("Fu_ksi"));
        Length wall = Length.inches(vector.in("t_in"));
        vector.check("weld_kip_per_in", weld.nominalPerInch().pounds() / vector.in("omega") / 1000);
        vector.check(
                "wall_shear_kip_per_in", weld.allowablePerInch(ultimate, wall).pounds() / 1000);
    }

    @Test
    void sheetRules() {
        Vector lengthy = Vectors.one("connection", "CX14");
        double along = FilletWeld.sheetAlong(
                        Length.inches(lengthy.in("L_in")),
                        Length.inches(lengthy.in("t_in")),
                        Stress.ksi(lengthy.in("Fu_ksi")))
                .pounds();
        lengthy.check("Pn_kip", along / 1000);
        lengthy.check("phiPn_kip", lengthy.in("phi") * along / 1000);
        Vector brief = Vectors.one("connection", "CX15");
        Length length = Length.inches(brief.in("L_in"));
        double sheet = FilletWeld.sheetAlong(length, Length.inches(brief.in("t_in")), Stress.ksi(brief.in("Fu_ksi")))
                .pounds();
        brief.check("phiPn_sheet_kip", brief.in("phi_sheet") * sheet / 1000);
        double metal = weld(brief.in("w_in"), brief.in("Fxx_ksi"))
                .sheetWeldMetal(length)
                .pounds();
        brief.check("phiPn_weld_kip", brief.in("phi_weld") * metal / 1000);
        Vector across = Vectors.one("connection", "CX16");
        Length run = Length.inches(across.in("L_in"));
        Length wall = Length.inches(across.in("t_in"));
        Stress ultimate = Stress.ksi(across.in("Fu_ksi"));
        across.check(
                "phiPn_fillet_kip",
                across.in("phi_fillet")
                        * FilletWeld.sheetAcross(run, wall, ultimate).pounds()
                        / 1000);
        across.check(
                "phiPn_flare_kip",
                across.in("phi_flare")
                        * FilletWeld.sheetFlare(run, wall, ultimate).pounds()
                        / 1000);
    }
}
