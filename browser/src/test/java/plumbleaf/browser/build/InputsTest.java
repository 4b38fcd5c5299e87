package plumbleaf.browser.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The engine is compiled again when a class or a table changed, and then only. */
class InputsTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void aFolderAndTheJarMadeOfItAreOneThing() throws IOException {
        Path classes = classes("one");
        Path jar = folder.resolve("plumbleaf-engine.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, "META-INF/MANIFEST.MF", "made today");
            put(zip, "b/Table.csv", "1,2");
            put(zip, "a/Line.class", "one");
        }
        assertThat(Inputs.digest(List.of(jar))).isEqualTo(Inputs.digest(List.of(classes)));
    }

    @Test
    void anotherClassIsAnotherEngineAndAnotherScriptIsNot() throws IOException {
        Path classes = classes("one");
        String before = Inputs.digest(List.of(classes));
        Files.writeString(classes.resolve("engine.js"), "export {}");
        assertThat(Inputs.digest(List.of(classes))).isEqualTo(before);
        classes("two");
        assertThat(Inputs.digest(List.of(classes))).isNotEqualTo(before);
    }

    @Test
    void aNewerCompilerIsAnotherEngine() throws IOException {
        Path classes = classes("one");
        assertThat(Inputs.digest(List.of(classes, Path.of("teavm-core-0.16.0.jar"))))
                .isNotEqualTo(Inputs.digest(List.of(classes, Path.of("teavm-core-0.17.0.jar"))));
    }

    private Path classes(String content) throws IOException {
        Path classes = folder.resolve("classes");
        Files.createDirectories(classes.resolve("a"));
        Files.createDirectories(classes.resolve("b"));
        Files.writeString(classes.resolve("a/Line.class"), content);
        Files.writeString(classes.resolve("b/Table.csv"), "1,2");
        return classes;
    }

    private static void put(ZipOutputStream zip, String name, String content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(content.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }
}
