package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.SlideSag;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;

/** What a slide gate comes to: its way, its rollers, its nose. */
final class SlideNumbers {
    private SlideNumbers() {}

    static Panel way(String id, String sentence, SlidePlan plan, Figures figures) {
        return Panel.of("Its way", id)
                .withRows(List.of(
                        new Row(id + ".hand", "Opens", sentence, "", id),
                        new Row(
                                id + ".running",
                                "Least room under the leaf",
                                figures.signed(plan.travel().running()),
                                "dropped, ground risen; "
                                        + figures.length(plan.travel().at().size())
                                        + (plan.travel().at().inches() < 0 ? " behind" : " past")
                                        + " the opening's face",
                                id),
                        new Row(
                                id + ".closed",
                                "Over the ground when shut",
                                figures.length(plan.travel().closedLeast()) + " to "
                                        + figures.length(plan.travel().closedLargest()),
                                "it travels level",
                                id),
                        new Row(
                                id + ".runback",
                                "Run-back to keep clear",
                                figures.length(plan.shape().openEnd().size()),
                                "behind the opening's face",
                                id),
                        new Row(
                                id + ".spacing",
                                "Roller posts apart",
                                figures.length(plan.shape().spacing()),
                                plan.rollers().name(),
                                id)));
    }

    static List<Panel> carried(String id, SlideDesign slide, Figures figures) {
        SlideSag sag = slide.sag();
        List<Row> wheels = new ArrayList<>();
        for (SlideCase each : slide.cases()) {
            boolean end = each.state() != LeafState.WORST && !each.combination().hasWind();
            if (end)
                wheels.add(new Row(
                        id + ".wheels." + each.state().key() + "."
                                + each.combination().key(),
                        "Front and rear, " + each.state().key() + ", "
                                + each.combination().key(),
                        figures.force(each.front().down().pounds()) + " and "
                                + figures.force(each.rear().down().pounds()),
                        each.rear().down().pounds() < 0
                                ? "it lifts the rear rollers"
                                : each.front().down().pounds() < 0 ? "it lifts the front rollers" : "",
                        id));
        }
        wheels.add(new Row(
                id + ".hand",
                "To keep it moving",
                figures.force(slide.rolling()),
                figures.force(slide.starting()) + " where set a little out of level",
                id));
        wheels.add(new Row(id + ".stop", "Run into its stop", figures.force(slide.stop()), "at the post", id));
        return List.of(
                Panel.of("On its rollers", id).withRows(wheels),
                Panel.of("Its nose", id)
                        .withRows(List.of(
                                new Row(
                                        id + ".drop",
                                        "Would drop",
                                        figures.length(sag.total()),
                                        "frame " + figures.length(sag.byCause().frame()) + ", play "
                                                + figures.length(sag.byCause().play()) + ", posts "
                                                + figures.length(sag.byCause().posts()) + ", footings "
                                                + figures.length(sag.byCause().footings()),
                                        id),
                                new Row(
                                        id + ".set",
                                        "Set the rear rollers low by",
                                        figures.length(sag.rearLower()),
                                        "then the nose stands level",
                                        id),
                                new Row(
                                        id + ".low",
                                        "May come in low by",
                                        figures.length(sag.low()),
                                        figures.length(sag.person()) + " of it a person who hangs on it",
                                        id),
                                new Row(
                                        id + ".across",
                                        "Aside in the service gust",
                                        figures.length(sag.across()),
                                        "before the receiver has it",
                                        id))));
    }
}
