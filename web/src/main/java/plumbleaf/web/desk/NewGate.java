package plumbleaf.web.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;
import plumbleaf.web.room.DocumentText;

/**
 * A single gate from six tape readings: opening, height, gap, and the ground at the latch foot and under the leaf's end half open and
 * open. Heights are up or down from the foot of the hinge post. The rest of a job stays assumed until someone says it.
 */
final class NewGate {
    private static final String TITLE = "title";
    private static final String DISPLAY = "display";
    private static final String CUSTOMER = "site.customer";
    private static final String PHONE = "site.phone";
    private static final String ADDRESS = "site.address";
    private static final String OPENING = "gates[0].opening";
    private static final String HEIGHT = "gates[0].leaf.infill";
    private static final String GAP = "gates[0].leaf.bottomGap";
    private static final String AT_LATCH = "ground.shots[1].elevation";
    private static final String AT_45 = "ground.shots[2].elevation";
    private static final String AT_90 = "ground.shots[3].elevation";
    private static final String SOIL = "site.soil.kind";
    static final String HAND = "hand";

    /** The line before and after the opening: room for the posts. */
    private static final Length BESIDE = Length.feet(2);

    private static final double SIXTEENTHS = 16;
    private static final double HALF_RIGHT = StrictMath.sqrt(0.5);

    private final Map<String, String> typed;

    NewGate(Map<String, String> typed) {
        this.typed = new LinkedHashMap<>(typed);
    }

    /** What is measured, then whose gate it is, each with what was typed and what is wrong with it. */
    List<Field> fields(List<InputError> errors) {
        List<Choice> soils = List.of(
                new Choice("sand", "sand"),
                new Choice("gravel", "gravel"),
                new Choice("clay", "clay"),
                new Choice("silt", "silt"),
                new Choice("rock", "rock"));
        return List.of(
                new Field(
                        DISPLAY,
                        "Measured in",
                        said(DISPLAY),
                        false,
                        Unit.WORDS,
                        List.of(new Choice("us", "feet and inches"), new Choice("metric", "millimeters")),
                        "",
                        "a number without a unit is inches, or millimeters",
                        problem(DISPLAY, errors)),
                field(OPENING, "Clear opening between the posts", Unit.INCHES, "the only one that is needed", errors),
                field(HEIGHT, "Height of the boards", Unit.INCHES, "empty: 6 ft", errors),
                field(GAP, "Gap under the leaf", Unit.INCHES, "empty: 3 in.", errors),
                field(AT_LATCH, "Ground at the latch foot", Unit.INCHES, "up + or down - from the hinge foot", errors),
                field(AT_45, "Ground under the leaf's end, half open", Unit.INCHES, "up + or down -", errors),
                field(AT_90, "Ground under the leaf's end, open", Unit.INCHES, "up + or down -", errors),
                new Field(
                        SOIL,
                        "Soil",
                        said(SOIL),
                        false,
                        Unit.WORDS,
                        soils,
                        "",
                        "empty: assumed",
                        problem(SOIL, errors)),
                field(TITLE, "Name of the job", Unit.WORDS, "", errors),
                field(CUSTOMER, "Customer", Unit.WORDS, "", errors),
                field(PHONE, "Phone", Unit.WORDS, "", errors),
                field(ADDRESS, "Address", Unit.WORDS, "", errors));
    }

    String hand() {
        return said(HAND);
    }

    /** The job file that these answers make. */
    String document() {
        boolean left = !said(HAND).startsWith("right");
        boolean in = !said(HAND).endsWith("out");
        Length opening =
                LengthText.lengthOnScreen(said(OPENING), units()).value().orElse(Length.feet(4));
        DocumentText text = DocumentText.of(base(opening, left, in));
        if (!said(HAND).isEmpty())
            text = text.with("gates[0].hinge", DocumentText.quoted(left ? "left" : "right"))
                    .with("gates[0].swing", DocumentText.quoted(in ? "in" : "out"));
        for (Map.Entry<String, String> answer : answers().entrySet())
            text = text.with(answer.getKey(), DocumentText.quoted(answer.getValue()));
        return text.text();
    }

    /** What goes into the file as it was typed; heights that were left open stay level with the hinge foot. */
    private Map<String, String> answers() {
        Map<String, String> answers = new LinkedHashMap<>();
        for (String path : List.of(TITLE, DISPLAY, CUSTOMER, PHONE, ADDRESS, SOIL))
            if (!said(path).isEmpty()) answers.put(path, said(path));
        answers.put(OPENING, Unit.INCHES.in(units()).complete(said(OPENING)));
        for (String path : List.of(HEIGHT, GAP, AT_LATCH, AT_45, AT_90))
            if (!said(path).isEmpty()) answers.put(path, Unit.INCHES.in(units()).complete(said(path)));
        return answers;
    }

    private static String base(Length opening, boolean left, boolean in) {
        double hingeIn = BESIDE.inches() + (left ? 0 : opening.inches());
        double towardsLatch = left ? 1 : -1;
        double reach = opening.inches();
        List<String> shots = new ArrayList<>();
        shots.add(shot("S1", hingeIn, "", "hinge foot"));
        shots.add(shot("S2", hingeIn + towardsLatch * reach, "", "latch foot"));
        String side = in ? "in" : "out";
        double halfway = hingeIn + towardsLatch * reach * HALF_RIGHT;
        shots.add(shot("S3", halfway, off(side, reach * HALF_RIGHT), "leaf's end, half open"));
        shots.add(shot("S4", hingeIn, off(side, reach), "leaf's end, open"));
        String run = LengthText.exact(opening.inches() + 2 * BESIDE.inches());
        return "{\n  \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"New gate\", \"display\": \"us\",\n"
                + "  \"ground\": {\n    \"shots\": [\n      " + String.join(",\n      ", shots) + "\n    ]\n  },\n"
                + "  \"runs\": [\n    { \"id\": \"R1\", \"legs\": [{ \"length\": " + DocumentText.quoted(run)
                + " }], \"style\": \"none\" }\n  ],\n"
                + "  \"gates\": [\n    { \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": "
                + DocumentText.quoted(LengthText.exact(BESIDE.inches()))
                + ", \"opening\": \"4'\", \"leaf\": { \"shape\": \"raked\" } }\n  ]\n}\n";
    }

    private static String shot(String id, double stationIn, String off, String note) {
        return "{ \"id\": \"" + id + "\", \"run\": \"R1\", \"station\": " + DocumentText.quoted(sixteenth(stationIn))
                + off + ", \"elevation\": \"0\\\"\", \"note\": \"" + note + "\" }";
    }

    private static String off(String side, double inches) {
        return ", \"" + side + "\": " + DocumentText.quoted(sixteenth(inches));
    }

    private static String sixteenth(double inches) {
        return LengthText.exact(Math.rint(inches * SIXTEENTHS) / SIXTEENTHS);
    }

    private DisplayUnits units() {
        return said(DISPLAY).equals("metric") ? DisplayUnits.METRIC : DisplayUnits.US;
    }

    private Field field(String path, String label, Unit unit, String note, List<InputError> errors) {
        return new Field(path, label, said(path), false, unit.in(units()), List.of(), "", note, problem(path, errors));
    }

    private static String problem(String path, List<InputError> errors) {
        for (InputError error : errors)
            if (error.field().equals(path))
                return error.problem() + (error.cure().isEmpty() ? "." : "; " + error.cure() + ".");
        return "";
    }

    private String said(String path) {
        return typed.getOrDefault(path, "").strip();
    }
}
