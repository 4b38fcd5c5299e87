package plumbleaf.engine.catalogue;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.section.Section;

/**
 * Parts that the user entered from makers' sheets, with the tables they came from. A capacity that the sheet does not give is unknown, and never a pass.
 *
 * @param tables as they were given, kept with the job
 * @param styles of fence, from a style file kept with the job
 */
public record OwnParts(
        List<Table> tables,
        List<HingeModel> hinges,
        List<LatchModel> latches,
        List<RodModel> rods,
        List<RollerModel> rollers,
        List<Section> sections,
        List<FenceStyle> styles) {
    public static final OwnParts NONE =
            new OwnParts(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /**
     * One table.
     *
     * @param file as it was called
     * @param rows heading first
     */
    public record Table(String file, List<String> rows) {
        public Table {
            rows = List.copyOf(rows);
        }
    }

    public OwnParts {
        tables = List.copyOf(tables);
        hinges = List.copyOf(hinges);
        latches = List.copyOf(latches);
        rods = List.copyOf(rods);
        rollers = List.copyOf(rollers);
        sections = List.copyOf(sections);
        styles = List.copyOf(styles);
    }

    public boolean isEmpty() {
        return tables.isEmpty();
    }

    public OwnParts plus(OwnParts other) {
        return new OwnParts(
                joined(tables, other.tables),
                joined(hinges, other.hinges),
                joined(latches, other.latches),
                joined(rods, other.rods),
                joined(rollers, other.rollers),
                joined(sections, other.sections),
                joined(styles, other.styles));
    }

    /** Ids of all of them. */
    public List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (HingeModel hinge : hinges) ids.add(hinge.id());
        for (LatchModel latch : latches) ids.add(latch.id());
        for (RodModel rod : rods) ids.add(rod.id());
        for (RollerModel roller : rollers) ids.add(roller.id());
        for (Section section : sections) ids.add(section.id());
        return ids;
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        List<T> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }
}
