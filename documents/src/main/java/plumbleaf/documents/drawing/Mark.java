package plumbleaf.documents.drawing;

import java.util.List;

/** One thing on a drawing. Those that are not already a {@link Primitive} say themselves in primitives, so a plotter knows five things only. */
public sealed interface Mark
        permits Primitive,
                Area,
                LinearDimension,
                OrdinateDimension,
                AngularDimension,
                Balloon,
                JointTag,
                Leader,
                NorthArrow,
                ScaleBar,
                WeldMark,
                SwingArc,
                SectionMark,
                LevelMark {
    /** This mark in lines, arcs, fills, dots and lettering, at a scale. */
    List<Primitive> drawn(Scale scale);
}
