package plumbleaf.web.files;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What may lie with a job. A file is what its first bytes say it is, whatever it is called; what is none of these is refused. */
public enum FileKind {
    JPEG("image/jpeg", true),
    PNG("image/png", true),
    WEBP("image/webp", true),
    HEIC("image/heic", false),
    PDF("application/pdf", false),
    TEXT("text/plain", false);

    private final String mediaType;
    private final boolean shown;

    FileKind(String mediaType, boolean shown) {
        this.mediaType = mediaType;
        this.shown = shown;
    }

    public String mediaType() {
        return mediaType;
    }

    /** Whether a browser shows it as a picture on a page. */
    public boolean isShown() {
        return shown;
    }

    public boolean isPhoto() {
        return shown || this == HEIC;
    }

    static Optional<FileKind> ofMediaType(String mediaType) {
        for (FileKind kind : values()) if (kind.mediaType.equals(mediaType)) return Optional.of(kind);
        return Optional.empty();
    }

    public static Optional<FileKind> of(byte[] bytes) {
        if (starts(bytes, 0, 0xFF, 0xD8, 0xFF)) return Optional.of(JPEG);
        if (starts(bytes, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) return Optional.of(PNG);
        if (starts(bytes, 0, 'R', 'I', 'F', 'F') && starts(bytes, 8, 'W', 'E', 'B', 'P')) return Optional.of(WEBP);
        if (starts(bytes, 4, 'f', 't', 'y', 'p', 'h', 'e', 'i')
                || starts(bytes, 4, 'f', 't', 'y', 'p', 'm', 'i', 'f', '1')) return Optional.of(HEIC);
        if (starts(bytes, 0, '%', 'P', 'D', 'F', '-')) return Optional.of(PDF);
        return isPlainText(bytes) ? Optional.of(TEXT) : Optional.empty();
    }

    private static boolean starts(byte[] bytes, int at, int... wanted) {
        if (bytes.length < at + wanted.length) return false;
        for (int i = 0; i < wanted.length; i++) if ((bytes[at + i] & 0xFF) != wanted[i]) return false;
        return true;
    }

    /** Points, drawings as DXF, lists, notes: text without control characters, and no page or picture made of markup. */
    private static boolean isPlainText(byte[] bytes) {
        if (bytes.length == 0) return false;
        for (byte one : bytes) if (one >= 0 && one < ' ' && one != '\n' && one != '\r' && one != '\t') return false;
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            String start = text.replace("\ufeff", "").stripLeading();
            return !start.startsWith("<");
        } catch (CharacterCodingException notText) {
            return false;
        }
    }
}
