package plumbleaf.engine.wind;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.Ties;

/**
 * Wind on one leg of fence with its gates shut and standing open: an open gate makes two free ends where a shut one made none.
 * Source: ASCE 7-16 Figure 29.3-1, applied to each state of the gates in turn. Check: WallWindCheck.
 *
 * @param states all shut first, then each gate open alone, then all open
 */
public record LegWind(List<State> states) {
    public LegWind {
        states = List.copyOf(states);
    }

    /**
     * One state of the gates.
     *
     * @param offsets where each piece starts on the leg
     */
    public record State(String name, List<WallWind> pieces, List<Length> offsets) {
        public State {
            pieces = List.copyOf(pieces);
            offsets = List.copyOf(offsets);
        }

        TributaryWind over(Span share) {
            double pounds = 0;
            double momentLbIn = 0;
            String name = "";
            double coefficientFt2 = 0;
            for (int at = 0; at < pieces.size(); at++) {
                WallWind piece = pieces.get(at);
                double startIn = offsets.get(at).inches();
                double fromIn = Math.max(0, share.from().inches() - startIn);
                double toIn = endIn(piece.stretch().length(), startIn, share);
                if (toIn <= fromIn) continue;
                TributaryWind part = piece.over(Length.inches(fromIn), Length.inches(toIn));
                pounds += part.force().pounds();
                momentLbIn += part.momentAtGrade().poundInches();
                coefficientFt2 += part.coefficient() * part.face().inSquareFeet();
                if (name.isEmpty()) name = part.windCase();
            }
            Length height = Length.inches(pounds > 0 ? momentLbIn / pounds : 0);
            double areaFt2 = share.length().inFeet() * surfaceFt();
            return new TributaryWind(
                    Force.pounds(pounds),
                    height,
                    Pressure.psf(areaFt2 > 0 ? pounds / areaFt2 : 0),
                    this.name + " " + name,
                    areaFt2 > 0 ? coefficientFt2 / areaFt2 : 0,
                    Area.squareFeet(areaFt2));
        }

        private double momentOver(double shareFromIn, double shareToIn) {
            double momentLbIn = 0;
            for (int at = 0; at < pieces.size(); at++) {
                WallWind piece = pieces.get(at);
                double startIn = offsets.get(at).inches();
                double fromIn = Math.max(0, shareFromIn - startIn);
                double toIn = Math.min(piece.stretch().length().inches(), shareToIn - startIn);
                if (toIn > fromIn) momentLbIn += piece.momentOver(Length.inches(fromIn), Length.inches(toIn));
            }
            return momentLbIn;
        }

        private double surfaceFt() {
            return pieces.isEmpty() ? 0 : pieces.get(0).stretch().surface().inFeet();
        }
    }

    /** Design wind on a leg whose gates stand at these openings, which must not overlap and rise along the leg. */
    public static LegWind of(SiteWind site, WallStretch leg, List<Span> openings, WindTables tables) {
        return of(site, leg, openings, tables, whole(leg));
    }

    /** The same for one share of the leg alone: pieces that do not meet it are left out, since a leg of many gates falls into very many. */
    public static LegWind of(SiteWind site, WallStretch leg, List<Span> openings, WindTables tables, Span share) {
        return of(piece -> WallWind.of(site, piece, tables), leg, openings, share);
    }

    /** A gust without the floor on the same leg. */
    public static LegWind gust(SiteWind site, Speed speed, WallStretch leg, List<Span> openings, WindTables tables) {
        return gust(site, speed, leg, openings, tables, whole(leg));
    }

    /** Such a gust for one share of the leg alone. */
    public static LegWind gust(
            SiteWind site, Speed speed, WallStretch leg, List<Span> openings, WindTables tables, Span share) {
        return of(piece -> WallWind.gust(site, speed, piece, tables), leg, openings, share);
    }

    private static Span whole(WallStretch leg) {
        return new Span(Length.ZERO, leg.length());
    }

    private interface Blow {
        WallWind on(WallStretch piece);
    }

    private static LegWind of(Blow blow, WallStretch leg, List<Span> openings, Span share) {
        List<State> states = new ArrayList<>();
        states.add(state("shut", blow, leg, List.of(), share));
        for (Span opening : openings) states.add(state("open", blow, leg, List.of(opening), share));
        if (openings.size() > 1) states.add(state("all open", blow, leg, openings, share));
        return new LegWind(states);
    }

    private static State state(String name, Blow blow, WallStretch leg, List<Span> gaps, Span share) {
        List<WallWind> pieces = new ArrayList<>();
        List<Length> offsets = new ArrayList<>();
        Length at = Length.ZERO;
        Length corner = leg.returnAtStart();
        for (Span gap : gaps) {
            if (gap.from().compareTo(at) > 0 && meets(at, gap.from().minus(at), share)) {
                pieces.add(blow.on(new WallStretch(
                        gap.from().minus(at), leg.surface(), leg.top(), leg.screen(), corner, Length.ZERO)));
                offsets.add(at);
            }
            at = gap.to();
            corner = Length.ZERO;
        }
        if (leg.length().compareTo(at) > 0 && meets(at, leg.length().minus(at), share)) {
            pieces.add(blow.on(new WallStretch(
                    leg.length().minus(at), leg.surface(), leg.top(), leg.screen(), corner, leg.returnAtEnd())));
            offsets.add(at);
        }
        return new State(name, pieces, offsets);
    }

    private static boolean meets(Length start, Length piece, Span share) {
        double startIn = start.inches();
        return endIn(piece, startIn, share) > Math.max(0, share.from().inches() - startIn);
    }

    /** Where a share ends on a piece, from the piece's start; not beyond its beginning there where the two do not meet. */
    private static double endIn(Length piece, double startIn, Span share) {
        return Math.min(piece.inches(), share.to().inches() - startIn);
    }

    /** The worst of all states on a post's share of the leg. */
    public TributaryWind over(Span share) {
        TributaryWind worst = states.get(0).over(share);
        for (State state : states) {
            TributaryWind here = state.over(share);
            if (Ties.isMore(
                    here.momentAtGrade().poundInches(), worst.momentAtGrade().poundInches())) worst = here;
        }
        return worst;
    }

    /** The moment about ground line in the worst of all states on that share, and nothing else of it. */
    public Moment mostMoment(Span share) {
        double mostLbIn = 0;
        for (State state : states)
            mostLbIn = Math.max(
                    mostLbIn, state.momentOver(share.from().inches(), share.to().inches()));
        return Moment.poundInches(mostLbIn);
    }

    /** All gates shut. */
    public TributaryWind shut(Span share) {
        return states.get(0).over(share);
    }
}
