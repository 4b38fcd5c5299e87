package plumbleaf.browser.build;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** One number for all that the module is made of, the same for a folder of classes as for the jar that is made of it. */
final class Inputs {
    private final MessageDigest digest;

    private Inputs() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    /** @param classPath folders and jars; those of the compiler and of libraries count by their name alone, which holds their version */
    static String digest(List<Path> classPath) throws IOException {
        Inputs inputs = new Inputs();
        for (Path part : classPath) inputs.part(part);
        return HexFormat.of().formatHex(inputs.digest.digest());
    }

    private void part(Path part) throws IOException {
        if (Files.isDirectory(part)) folder(part);
        else if (part.getFileName().toString().startsWith("plumbleaf-")) jar(part);
        else name(part.getFileName().toString());
    }

    private void folder(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(folder)) {
            files = new ArrayList<>(walk.filter(Files::isRegularFile).toList());
        }
        files.sort(Comparator.comparing(file -> nameIn(folder, file)));
        for (Path file : files) {
            String name = nameIn(folder, file);
            if (!counts(name)) continue;
            name(name);
            digest.update(Files.readAllBytes(file));
        }
    }

    private static String nameIn(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    private void jar(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            List<ZipEntry> entries = new ArrayList<>(zip.stream()
                    .filter(entry -> !entry.isDirectory() && counts(entry.getName()))
                    .toList());
            entries.sort(Comparator.comparing(ZipEntry::getName));
            for (ZipEntry entry : entries) {
                name(entry.getName());
                try (InputStream in = zip.getInputStream(entry)) {
                    digest.update(in.readAllBytes());
                }
            }
        }
    }

    /** Classes and tables do; what a jar says of itself, fonts, scripts and what the build itself makes do not. */
    private static boolean counts(String name) {
        return name.endsWith(".class") || name.endsWith(".csv") || name.endsWith("styles.json");
    }

    private void name(String name) {
        digest.update(name.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }
}
