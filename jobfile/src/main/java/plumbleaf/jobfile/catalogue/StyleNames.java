package plumbleaf.jobfile.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FencePosts;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.jobfile.input.InputError;

/** Checks that woods, sections and posts which styles name are in the catalogue, and that infill and rails go together. */
final class StyleNames {
    private final String file;
    private final Catalogue known;
    private final List<InputError> errors = new ArrayList<>();

    private StyleNames(String file, Catalogue known) {
        this.file = file;
        this.known = known;
    }

    static StyleReading checked(String file, StyleReading.Good good, Catalogue known) {
        StyleNames names = new StyleNames(file, known);
        for (FenceStyle style : good.styles()) names.style(style);
        return names.errors.isEmpty() ? good : new StyleReading.Bad(names.errors);
    }

    private void style(FenceStyle style) {
        String rails = style.rails().match(none -> "none", wood -> "wood", steel -> "steel");
        String wanted = style.infill()
                .match(
                        up -> board(style, up.board(), "wood"),
                        both -> board(style, both.board(), "wood"),
                        lying -> board(style, lying.board(), "none"),
                        panel -> section(style, panel.picket(), "steel"),
                        fabric -> "steel",
                        mesh -> "steel");
        if (!rails.equals(wanted))
            error(style, "its infill goes with rails of kind " + wanted + ", not " + rails, "write that kind");
        style.rails()
                .match(none -> "", wood -> board(style, wood.rail(), ""), steel -> section(style, steel.section(), ""));
        for (FencePosts.PostSize post : style.posts().line()) post(style, post.size());
        for (FencePosts.PostSize post : style.posts().terminal()) post(style, post.size());
        for (Optional<Board> board :
                List.of(style.trim().cap(), style.trim().fascia(), style.trim().kick()))
            board.ifPresent(is -> board(style, is, ""));
    }

    private String board(FenceStyle style, Board board, String rails) {
        if (known.species(board.species()).isEmpty())
            error(style, "there is no wood " + board.species(), "write one such as western_redcedar");
        return rails;
    }

    private String section(FenceStyle style, String id, String rails) {
        if (known.section(id).isEmpty()) error(style, "there is no section " + id, "write one such as TUBE-1x1x0.065");
        return rails;
    }

    private void post(FenceStyle style, String id) {
        if (known.post(id).isEmpty())
            error(style, "there is no post " + id, "write one such as F1083-REG-2 or PINE-4x4");
    }

    private void error(FenceStyle style, String problem, String cure) {
        errors.add(InputError.ofFile(file, "style " + style.id() + ": " + problem, cure));
    }
}
