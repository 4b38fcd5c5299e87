package plumbleaf.documents;

import java.util.List;
import plumbleaf.documents.drawing.Emblem;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.mark.LinkCode;
import plumbleaf.engine.design.Offered;

/**
 * How papers are to come out.
 *
 * @param size       of pages of text
 * @param sheets     of sheets of drawings
 * @param contractor name first, then address, phone, licence; what every title block and page says
 * @param revision   letter of this issue; a released gate has its own
 * @param offered    options of the job, for the proposal
 * @param emblem     the contractor's own mark; empty for none
 * @param input      SHA-256 of the job file, for the calculation book; empty where it is not known
 * @param code       web address of the job as the code that a phone reads, in a square of side 1; empty where it is not known
 */
public record PaperOptions(
        PaperSize size,
        PaperSize sheets,
        List<String> contractor,
        String revision,
        List<Offered> offered,
        List<Emblem> emblem,
        List<Primitive> code,
        String input) {
    public PaperOptions {
        offered = List.copyOf(offered);
        contractor = List.copyOf(contractor);
        emblem = List.copyOf(emblem);
        code = List.copyOf(code);
        if (contractor.isEmpty()) throw new IllegalArgumentException("Papers need the contractor's name");
    }

    /** With a mark and a link. */
    public PaperOptions(
            PaperSize size,
            PaperSize sheets,
            List<String> contractor,
            String revision,
            List<Offered> offered,
            List<Emblem> emblem,
            String link) {
        this(size, sheets, contractor, revision, offered, emblem, LinkCode.of(link), "");
    }

    /** Without a mark and a link. */
    public PaperOptions(
            PaperSize size, PaperSize sheets, List<String> contractor, String revision, List<Offered> offered) {
        this(size, sheets, contractor, revision, offered, List.of(), List.of(), "");
    }

    /** Letter and tabloid, first issue, with a contractor's line to be filled in. */
    public static PaperOptions usual() {
        return new PaperOptions(
                PaperSize.LETTER, PaperSize.TABLOID, List.of("Your company", "phone and license here"), "A", List.of());
    }

    public PaperOptions with(List<Offered> options) {
        return new PaperOptions(size, sheets, contractor, revision, options, emblem, code, input);
    }

    public PaperOptions linkedTo(String address) {
        return new PaperOptions(size, sheets, contractor, revision, offered, emblem, LinkCode.of(address), input);
    }

    public PaperOptions issued(String letter) {
        return new PaperOptions(size, sheets, contractor, letter, offered, emblem, code, input);
    }

    /** Of a job as its file says it, byte for byte. */
    public PaperOptions madeFrom(byte[] jobFile) {
        return new PaperOptions(size, sheets, contractor, revision, offered, emblem, code, InputDigest.sha256(jobFile));
    }
}
