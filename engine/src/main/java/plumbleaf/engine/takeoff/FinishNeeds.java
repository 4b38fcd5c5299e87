package plumbleaf.engine.takeoff;

import java.util.List;
import plumbleaf.engine.job.Stain;
import plumbleaf.engine.quantity.Area;

/** Stain for the wood of a bay or a leaf: every face and both ends of every board, before anything is put together. */
public final class FinishNeeds {
    /** What ends on the ground and in the brush. Judgement. */
    private static final double LOSS = 0.10;

    /** The middle of 100 to 200 ft2 a gallon on rough wood: USDA Wood Handbook, chapter 16. */
    private static final double ROUGH_FT2 = 150;

    /** The middle of 200 to 400 ft2 a gallon on smooth wood: the same. */
    private static final double SMOOTH_FT2 = 300;

    /** A second coat goes farther, 1.3 to 1.5 times: common practice, no source. */
    private static final double SECOND = 1.4;

    private static final double NM_PER_INCH = 25_400_000.0;

    private FinishNeeds() {}

    /** @param brushedFt2 over all coats, for the hours */
    public record Coats(List<Need> needs, double brushedFt2) {
        public Coats {
            needs = List.copyOf(needs);
        }
    }

    static Coats of(Needs parts, Stain stain, String cause) {
        if (stain.isNone()) return new Coats(List.of(), 0);
        double in2 = 0;
        for (BarNeed bar : parts.bars()) {
            if (bar.saw() == BarNeed.Saw.WOOD) in2 += faces(bar);
        }
        if (in2 == 0) return new Coats(List.of(), 0);
        Area area = Area.squareInches(in2);
        double first = stain.texture() == Stain.Texture.ROUGH ? ROUGH_FT2 : SMOOTH_FT2;
        Coating coating = new Coating(stain.coats(), first, first * SECOND, LOSS);
        Need need = new Need("stain", "wood stain", PartGroup.FINISH, NetUnit.GALLONS, coating.gallons(area, 1), cause);
        return new Coats(List.of(need), area.inSquareFeet() * stain.coats());
    }

    /** {@code 2 (w + t) L + 2 w t}. Geometry. Check: FinishNeedsTest. */
    private static double faces(BarNeed bar) {
        double[] dressed = WoodItem.dressedIn(bar.item());
        double lengthIn = bar.piece().longPointNm() / NM_PER_INCH;
        return 2 * (dressed[0] + dressed[1]) * lengthIn + 2 * dressed[0] * dressed[1];
    }
}
