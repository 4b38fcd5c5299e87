package plumbleaf.jobfile.job;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.LeafFill;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code gates[].leaf.fill}: what fills the frame. Left out, it is what the fence is made of. */
final class FillForm {
    private static final List<String> KINDS = List.of("as-fence", "none", "style", "metal-pickets", "mesh", "sheet");
    private static final TextKind<MeshEdge> EDGE = TextKind.oneOf("an edge", List.of(MeshEdge.values()), MeshEdge::key);

    private FillForm() {}

    static LeafFill read(Fields leaf) {
        return given(leaf).orElse(new LeafFill.AsFence());
    }

    static Optional<LeafFill> given(Fields leaf) {
        return leaf.choice("fill", KINDS).map(FillForm::fill);
    }

    private static LeafFill fill(Choice choice) {
        Fields fields = choice.fields();
        return switch (choice.kind()) {
            case "none" -> new LeafFill.Bare();
            case "style" -> new LeafFill.Style(fields.needed("style", TextKind.WORDS, ""));
            case "metal-pickets" ->
                new LeafFill.Pickets(
                        fields.assumed("section", TextKind.WORDS, "PICKET-0.75x0.75x0.065", Words.CUSTOM),
                        fields.assumed(
                                "gap", Words.SPACE, Length.inches(3.875), "no 4 in. ball passes; common practice"),
                        fields.flag("punched"));
            case "mesh" -> mesh(fields);
            case "sheet" ->
                new LeafFill.Sheet(
                        fields.assumed("thickness", Words.ROD, Length.inches(0.0598), "16 gauge, common practice"),
                        fields.assumed("edge", EDGE, MeshEdge.DIRECT, Words.CUSTOM));
            default -> new LeafFill.AsFence();
        };
    }

    private static LeafFill mesh(Fields fields) {
        Length wire = fields.assumed("wire", Words.ROD, Length.inches(0.192), "6 gauge, common practice");
        Length pitch = fields.assumed("pitch", Words.SPACE, Length.inches(2), Words.CUSTOM);
        if (pitch.compareTo(wire) <= 0) {
            fields.refuse("pitch", "the wires lie closer than they are thick", "write the distance from wire to wire");
            pitch = wire.times(2);
        }
        return new LeafFill.Mesh(
                fields.flag("woven"), wire, pitch, fields.assumed("edge", EDGE, MeshEdge.ANGLE, Words.CUSTOM));
    }

    static void write(LeafFill fill, Entries out) {
        Entries written = fill.match(
                asFence -> out,
                bare -> out.choice("fill", bare.key(), rest -> {}),
                style -> out.choice("fill", style.key(), rest -> rest.words("style", style.id())),
                pickets -> out.choice(
                        "fill",
                        pickets.key(),
                        rest -> rest.words("section", pickets.section())
                                .put("gap", TextKind.LENGTH, pickets.gap())
                                .flag("punched", pickets.punched())),
                mesh -> out.choice(
                        "fill",
                        mesh.key(),
                        rest -> rest.flag("woven", mesh.woven())
                                .put("wire", TextKind.LENGTH, mesh.wire())
                                .put("pitch", TextKind.LENGTH, mesh.pitch())
                                .put("edge", EDGE, mesh.edge())),
                sheet -> out.choice(
                        "fill",
                        sheet.key(),
                        rest -> rest.put("thickness", TextKind.LENGTH, sheet.thickness())
                                .put("edge", EDGE, sheet.edge())));
        if (written != out) throw new IllegalStateException("A fill was not written");
    }
}
