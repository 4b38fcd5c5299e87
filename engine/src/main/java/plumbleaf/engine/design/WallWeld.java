package plumbleaf.engine.design;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.FilletWeld;

/** What an inch of fillet on a tube may carry. */
final class WallWeld {
    private WallWeld() {}

    /**
     * The least of fillet, wall on the design wall, and, for tube that no tube standard vouches for, the sheet rule. No more for a load across the weld: at the
     * ends of tube in tension none is allowed. Source: AISC 360-22 J2.4, J4.2(b), B4.2; AISI S100 as in NSR-10 F.4.5.2, its omega from memory. Check: FilletWeldCheck.
     */
    static Force allowablePerInch(Length leg, Stress electrode, Section tube, Length along) {
        Force steel = new FilletWeld(leg, electrode).allowablePerInch(tube.ultimateStress(), tube.designWall());
        if (tube.yieldIsVouchedFor()) return steel;
        Force sheet = FilletWeld.allowableSheetAlong(along, tube.nominalWall(), tube.ultimateStress());
        return sheet.compareTo(steel) < 0 ? sheet : steel;
    }
}
