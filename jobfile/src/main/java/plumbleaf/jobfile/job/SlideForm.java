package plumbleaf.jobfile.job;

import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code gates[].slide} of a slide gate: tail, roller posts, receiver. */
final class SlideForm {
    private SlideForm() {}

    static SlideSpec read(Fields slide, Length opening) {
        SlideSpec usual = SlideSpec.usual(opening);
        return new SlideSpec(
                slide.assumed("tail", Words.OPENING, usual.tail(), "half the opening, common practice, no source"),
                Open.of(slide.given("spacing", Words.OPENING)),
                slide.assumed("overlap", Words.GAP, usual.overlap(), Words.CUSTOM),
                slide.assumed("beside", Words.SWING, usual.beside(), "inside its posts, common practice, no source"),
                Open.of(slide.given("rollers", TextKind.WORDS)),
                slide.assumed("uprights", Words.HEIGHT, usual.uprights(), Words.CUSTOM),
                slide.assumed("mouthUp", Words.GAP, usual.mouthUp(), Words.JUDGED),
                slide.assumed("mouthAcross", Words.GAP, usual.mouthAcross(), Words.JUDGED),
                slide.flag("powered"),
                SupportForm.read(slide.object("rearPost")));
    }

    static void write(SlideSpec slide, Entries out) {
        out.put("tail", TextKind.LENGTH, slide.tail())
                .putIfAny("spacing", TextKind.LENGTH, slide.spacing().value())
                .put("overlap", TextKind.LENGTH, slide.overlap())
                .put("beside", Words.SWING, slide.beside())
                .putIfAny("rollers", TextKind.WORDS, slide.rollers().value())
                .put("uprights", TextKind.LENGTH, slide.uprights())
                .put("mouthUp", TextKind.LENGTH, slide.mouthUp())
                .put("mouthAcross", TextKind.LENGTH, slide.mouthAcross())
                .flag("powered", slide.powered())
                .object("rearPost", post -> SupportForm.write(slide.rearPost(), post));
    }
}
