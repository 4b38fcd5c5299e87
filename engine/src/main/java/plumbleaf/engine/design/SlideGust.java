package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.MemberForce;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.TubeStrength;

/**
 * The gust that a slide gate's links stand: {@code D} and {@code D+0.6W} at the same place of its way give what weight and wind do, since forces are linear, and the wind
 * is then let grow. Source: ASCE 7-16 2.4.1 combinations 5 and 7. Check: SlideGateTest.
 */
final class SlideGust {
    private static final double ASD = Combination.D_W.wind();

    private final GateSite site;
    private final SlideDesign slide;
    private final Speed speed;
    private final List<Blown> blown = new ArrayList<>();

    /** A place of the way with and without wind, and what part of the wind is left in a plain gust. */
    private record Blown(SlideCase still, SlideCase windy, double gustPart) {
        PostGust on(Function<SlideCase, BaseAction> of) {
            return new PostGust(of.apply(still), of.apply(windy), gustPart);
        }
    }

    SlideGust(GateSite site, SlideDesign slide) {
        this.site = site;
        this.slide = slide;
        this.speed = site.job().site().wind().speed();
        for (SlideCase windy : slide.cases()) {
            if (windy.combination() != Combination.D_W) continue;
            double part = SlideWork.gustPart(site, slide.gate().plan(), windy.state());
            for (SlideCase still : slide.cases())
                if (still.combination() == Combination.D
                        && still.state() == windy.state()
                        && still.travel().equals(windy.travel())) blown.add(new Blown(still, windy, part));
        }
    }

    /** Steel and footing of one of its posts. */
    RatedGust post(PostDesign post, Function<SlideCase, BaseAction> of) {
        List<GustPart> parts = new ArrayList<>();
        Optional<FootingGust> footing = GatePosts.footing(site, post);
        for (Blown one : blown) {
            parts.add(one.on(of).steel(post));
            one.on(of).footing(footing).ifPresent(parts::add);
        }
        return RatedGust.of(speed, parts);
    }

    /** Its frame, on the straight line through what its members use without and with the wind, and its guide wheels where their capacity is known. */
    RatedGust leaf() {
        List<GustPart> parts = new ArrayList<>();
        double holds = slide.gate().plan().rollers().sideCapacity().pounds();
        for (Blown one : blown) {
            for (int at = 0; at < one.still().members().size(); at++) {
                MemberForce member = one.still().members().get(at);
                double still = SlideStrength.ratio(slide.gate().plan(), member);
                double windy = SlideStrength.ratio(
                        slide.gate().plan(), one.windy().members().get(at));
                parts.add(new GustPart(
                        "frame " + member.member(),
                        still,
                        Math.max(0, windy - still) / ASD * one.gustPart(),
                        1,
                        TubeStrength.SAFETY));
            }
            if (holds == 0) continue;
            double still = across(one.still());
            double windy = across(one.windy());
            parts.add(new GustPart(
                    "guide wheels",
                    still,
                    Math.max(0, windy - still) / ASD * one.gustPart(),
                    holds,
                    holds * TubeStrength.SAFETY));
        }
        return RatedGust.of(speed, parts);
    }

    private static double across(SlideCase each) {
        return Math.max(each.front().across().pounds(), each.rear().across().pounds());
    }
}
