package plumbleaf.documents;

import java.io.IOException;
import java.io.OutputStream;

/** A file to be written: its name, without a folder, and its bytes. */
public final class PaperFile {
    private final String name;
    private final byte[] bytes;

    public PaperFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes.clone();
    }

    /** {@code gate-G1.pdf}. */
    public String name() {
        return name;
    }

    /** {@code application/pdf}, {@code image/svg+xml}, {@code image/vnd.dxf}. */
    public String mediaType() {
        if (name.endsWith(".pdf")) return "application/pdf";
        if (name.endsWith(".svg")) return "image/svg+xml";
        return name.endsWith(".dxf") ? "image/vnd.dxf" : "application/octet-stream";
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    public int size() {
        return bytes.length;
    }

    public void writeTo(OutputStream out) throws IOException {
        out.write(bytes);
    }
}
