package plumbleaf.jobfile.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FencePosts;
import plumbleaf.engine.catalogue.FenceRails;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.catalogue.RailCount;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code styles[]} of a style file. */
final class StyleForm {
    private static final List<String> INFILLS = List.of("upright", "both-sides", "lying", "panel", "fabric", "mesh");
    private static final List<String> RAILS = List.of("none", "wood", "steel");
    private static final TextKind<BoardTop> TOP =
            TextKind.oneOf("a top of a board", List.of(BoardTop.values()), BoardTop::key);
    private static final TextKind<Length> WOOD = TextKind.sizeUpTo(Length.inches(24));
    private static final TextKind<Length> WIRE = TextKind.sizeUpTo(Length.inches(1));
    private static final TextKind<Length> MESH = TextKind.sizeUpTo(Length.inches(12));
    private static final TextKind<Length> GOODS = TextKind.sizeUpTo(Length.feet(500));
    private static final TextKind<Length> HEIGHT = TextKind.sizeUpTo(Length.feet(16));
    private static final TextKind<Length> EDGE = TextKind.lengthUpTo(Length.feet(2));
    private static final TextKind<Offset> GAP = TextKind.offsetUpTo(Length.inches(12));
    private static final Board STAND_IN = new Board(Length.inches(5.5), Length.inches(0.75), "western_redcedar");

    private static final FenceInfill STAND_IN_INFILL = new FenceInfill.Upright(
            STAND_IN, new Spacing(Offset.ZERO, Offset.ZERO, Offset.ZERO, Length.ZERO), BoardTop.FLAT, 1);

    private StyleForm() {}

    static FenceStyle read(Fields style) {
        return new FenceStyle(
                style.needed("id", TextKind.WORDS, ""),
                style.needed("name", TextKind.WORDS, ""),
                style.needed("words", TextKind.WORDS, ""),
                infill(style),
                rails(style),
                posts(style.object("posts")),
                trim(style.object("trim")),
                style.needed("source", TextKind.WORDS, ""));
    }

    private static FenceInfill infill(Fields style) {
        Optional<Choice> choice = style.choice("infill", INFILLS);
        if (choice.isEmpty()) {
            if (!style.has("infill"))
                style.refuse(
                        "", "a style says what fills its bays", "write \"infill\": { \"kind\": \"upright\", ... }");
            return STAND_IN_INFILL;
        }
        Fields of = choice.get().fields();
        return switch (choice.get().kind()) {
            case "upright" -> new FenceInfill.Upright(board(of), spacing(of), top(of), fasteners(of));
            case "both-sides" -> new FenceInfill.BothSides(board(of), spacing(of), top(of), fasteners(of));
            case "lying" -> new FenceInfill.Lying(board(of), spacing(of), fasteners(of));
            case "panel" ->
                new FenceInfill.Panel(
                        of.needed("length", GOODS, Length.feet(8)),
                        of.needed("picket", TextKind.WORDS, ""),
                        of.needed("gap", MESH, Length.inches(4)),
                        of.needed("rack", TextKind.SLOPE, Slope.ZERO),
                        of.needed("swivel", TextKind.ANGLE, Angle.ZERO));
            case "fabric" ->
                new FenceInfill.Fabric(
                        of.needed("wire", WIRE, Length.inches(0.148)),
                        of.needed("mesh", MESH, Length.inches(2)),
                        of.needed("roll", GOODS, Length.feet(50)),
                        of.given("slats", TextKind.shareUpTo(1)).orElse(0.0),
                        of.givenCount("barbed", 0, 6).orElse(0));
            case "mesh" ->
                new FenceInfill.Mesh(
                        of.needed("wire", WIRE, Length.inches(0.192)),
                        of.needed("across", MESH, Length.inches(2)),
                        of.needed("upright", MESH, Length.inches(4)),
                        of.needed("sheet", GOODS, Length.feet(8)));
            default ->
                new FenceInfill.Upright(
                        STAND_IN, new Spacing(Offset.ZERO, Offset.ZERO, Offset.ZERO, Length.ZERO), BoardTop.FLAT, 1);
        };
    }

    private static Board board(Fields of) {
        return board(of.object("board"), of);
    }

    /** A board that must be there: all its sizes are asked for, so that each that lacks is named. */
    private static Board board(Fields board, Fields parent) {
        if (!board.there())
            parent.refuse("", "this needs its board", "write \"board\": { \"width\": \"5-1/2\\\"\", ... }");
        return new Board(
                board.there() ? board.needed("width", WOOD, STAND_IN.width()) : STAND_IN.width(),
                board.there() ? board.needed("thickness", WOOD, STAND_IN.thickness()) : STAND_IN.thickness(),
                board.there() ? board.needed("species", TextKind.WORDS, STAND_IN.species()) : STAND_IN.species());
    }

    private static Spacing spacing(Fields of) {
        Offset gap = of.needed("gap", GAP, Offset.ZERO);
        Offset least = of.given("leastGap", GAP).orElse(gap);
        Offset greatest = of.given("greatestGap", GAP).orElse(gap);
        if (least.compareTo(gap) > 0) {
            of.refuse("leastGap", "this is more than the gap", "write the same or less");
            least = gap;
        }
        if (greatest.compareTo(gap) < 0) {
            of.refuse("greatestGap", "this is less than the gap", "write the same or more");
            greatest = gap;
        }
        return new Spacing(gap, least, greatest, of.needed("leastRip", WOOD, Length.inches(1)));
    }

    private static BoardTop top(Fields of) {
        return of.given("top", TOP).orElse(BoardTop.FLAT);
    }

    private static int fasteners(Fields of) {
        return of.neededCount("fasteners", 1, 8, 2);
    }

    private static FenceRails rails(Fields style) {
        Optional<Choice> said = style.choice("rails", RAILS);
        if (said.isEmpty()) return new FenceRails.None();
        Choice choice = said.get();
        Fields of = choice.fields();
        return switch (choice.kind()) {
            case "wood" ->
                new FenceRails.Wood(
                        new Board(
                                of.needed("width", WOOD, Length.inches(3.5)),
                                of.needed("thickness", WOOD, Length.inches(1.5)),
                                of.needed("species", TextKind.WORDS, "")),
                        counts(of),
                        of.needed("edge", EDGE, Length.ZERO));
            case "steel" ->
                new FenceRails.Steel(
                        of.needed("section", TextKind.WORDS, ""),
                        counts(of),
                        of.needed("edge", EDGE, Length.ZERO),
                        of.flag("bottomWire"));
            default -> new FenceRails.None();
        };
    }

    private static List<RailCount> counts(Fields of) {
        List<RailCount> counts = new ArrayList<>();
        for (Fields row : of.objects("counts"))
            counts.add(new RailCount(row.needed("upTo", HEIGHT, Length.feet(6)), row.neededCount("count", 1, 12, 2)));
        if (counts.isEmpty())
            of.refuse(
                    "counts",
                    "rails are counted by the height of the infill",
                    "write \"counts\": [ { \"upTo\": \"6'\", \"count\": 3 } ]");
        return counts;
    }

    private static FencePosts posts(Fields posts) {
        List<FencePosts.PostSize> line = sizes(posts, "line");
        if (line.isEmpty()) {
            posts.refuse(
                    "line",
                    "a style names its usual line posts",
                    "write \"line\": [ { \"upTo\": \"6'\", \"size\": \"F1083-REG-2\" } ]");
            line = List.of(new FencePosts.PostSize(Length.feet(16), "F1083-REG-2"));
        }
        return new FencePosts(line, sizes(posts, "terminal"));
    }

    private static List<FencePosts.PostSize> sizes(Fields posts, String key) {
        List<FencePosts.PostSize> sizes = new ArrayList<>();
        for (Fields row : posts.objects(key))
            sizes.add(new FencePosts.PostSize(
                    row.needed("upTo", HEIGHT, Length.feet(6)), row.needed("size", TextKind.WORDS, "")));
        return sizes;
    }

    private static FenceTrim trim(Fields trim) {
        return new FenceTrim(
                trimBoard(trim, "cap"),
                trimBoard(trim, "fascia"),
                trimBoard(trim, "kick"),
                lattice(trim.object("lattice")));
    }

    private static Optional<Board> trimBoard(Fields trim, String key) {
        Fields board = trim.object(key);
        return board.there() ? Optional.of(board(board, trim)) : Optional.empty();
    }

    private static Optional<FenceTrim.Lattice> lattice(Fields lattice) {
        if (!lattice.there()) return Optional.empty();
        return Optional.of(new FenceTrim.Lattice(
                lattice.needed("height", HEIGHT, Length.feet(1)),
                lattice.needed("sheet", GOODS, Length.feet(8)),
                lattice.needed("solid", TextKind.shareUpTo(1), 0.5),
                lattice.needed("species", TextKind.WORDS, "")));
    }
}
