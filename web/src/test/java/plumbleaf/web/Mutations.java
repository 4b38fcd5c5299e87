package plumbleaf.web;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/** Spoils a file in one of the ways files get spoilt, by a seeded die: bits, spans, lines, and pieces of other files. */
public final class Mutations {
    private static final List<String> PIECES = List.of(
            "null",
            "-1",
            "1e999",
            "\"",
            "{",
            "}",
            "[",
            "]",
            ",",
            "\u0000",
            "\uFEFF",
            "=1+1",
            "../",
            "9223372036854775808",
            "\"\\ud800\"",
            "NaN",
            "\"'; drop table job; --\"",
            "<script>",
            "\n\n",
            "0.1",
            "true",
            "{}",
            "[]",
            "\"x\":");

    private Mutations() {}

    /** One to four changes. */
    public static byte[] of(byte[] good, Random random) {
        byte[] bytes = good;
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) bytes = once(bytes, random);
        return bytes;
    }

    private static byte[] once(byte[] bytes, Random random) {
        int from = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, from + 1 + random.nextInt(1 + random.nextInt(64)));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        switch (random.nextInt(5)) {
            case 0 -> {
                if (from < bytes.length) out.write(bytes[from] ^ (1 << random.nextInt(8)));
                if (from + 1 <= bytes.length) out.write(bytes, from + 1, Math.max(0, bytes.length - from - 1));
            }
            case 1 -> out.write(bytes, to, bytes.length - to);
            case 2 -> {
                out.write(bytes, from, to - from);
                out.write(bytes, from, bytes.length - from);
            }
            case 3 -> {
                byte[] piece = PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
                out.write(piece, 0, piece.length);
                out.write(bytes, to, bytes.length - to);
            }
            default -> {
                byte[] piece = PIECES.get(random.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8);
                out.write(piece, 0, piece.length);
                out.write(bytes, from, bytes.length - from);
            }
        }
        return out.toByteArray();
    }
}
