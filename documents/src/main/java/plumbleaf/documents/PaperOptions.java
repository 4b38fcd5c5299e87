package plumbleaf.documents;

import java.util.List;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.engine.design.Offered;

/**
 * How papers are to come out.
 *
 * @param size       of pages of text
 * @param sheets     of sheets of drawings
 * @param contractor name first, then address, phone, licence; what every title block and page says
 * @param revision   letter of this issue; a released gate has its own
 * @param offered    options of the job, for the proposal
 */
public record PaperOptions(
        PaperSize size, PaperSize sheets, List<String> contractor, String revision, List<Offered> offered) {
    public PaperOptions {
        offered = List.copyOf(offered);
        contractor = List.copyOf(contractor);
        if (contractor.isEmpty()) throw new IllegalArgumentException("Papers need the contractor's name");
    }

    /** Letter and tabloid, first issue, with a contractor's line to be filled in. */
    public static PaperOptions usual() {
        return new PaperOptions(
                PaperSize.LETTER, PaperSize.TABLOID, List.of("Your company", "phone and license here"), "A", List.of());
    }

    public PaperOptions with(List<Offered> options) {
        return new PaperOptions(size, sheets, contractor, revision, options);
    }
}
