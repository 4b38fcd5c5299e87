package plumbleaf.browser.build;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import org.teavm.diagnostics.DefaultProblemTextConsumer;
import org.teavm.diagnostics.Problem;
import org.teavm.tooling.EmptyTeaVMToolLog;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.tooling.TeaVMToolException;
import org.teavm.vm.TeaVMOptimizationLevel;

/** Compiles the engine to one WebAssembly module, unless it has that module already. Called by the build with the folder of the page's files. */
public final class ToWebAssembly {
    private static final String MODULE = "engine.wasm";
    private static final String ENTRY = "plumbleaf.browser.PageEngine";

    private final Path folder;
    private final Path stamp;

    private ToWebAssembly(Path folder, Path stamp) {
        this.folder = folder;
        this.stamp = stamp;
    }

    /** @param words the folder the module goes to, and the file that remembers what it was made of */
    public static void main(String[] words) throws IOException, TeaVMToolException {
        new ToWebAssembly(Path.of(words[0]), Path.of(words[1])).make();
    }

    private void make() throws IOException, TeaVMToolException {
        String inputs = Inputs.digest(classPath());
        if (Files.exists(folder.resolve(MODULE))
                && Files.exists(stamp)
                && Files.readString(stamp, StandardCharsets.UTF_8).equals(inputs)) return;
        Files.deleteIfExists(stamp);
        Files.createDirectories(folder);
        compile();
        pack();
        Files.writeString(stamp, inputs, StandardCharsets.UTF_8);
    }

    private static List<Path> classPath() {
        List<Path> parts = new ArrayList<>();
        for (String part : System.getProperty("java.class.path").split(File.pathSeparator, -1))
            parts.add(Path.of(part));
        return parts;
    }

    /** Strict: an index past the end of a list is the same fault there as here. */
    private void compile() throws TeaVMToolException {
        TeaVMTool tool = new TeaVMTool();
        tool.setTargetDirectory(folder.toFile());
        tool.setTargetFileName(MODULE);
        tool.setTargetType(TeaVMTargetType.WEBASSEMBLY_GC);
        tool.setMainClass(ENTRY);
        tool.setStrict(true);
        tool.setObfuscated(true);
        tool.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        tool.setLog(new EmptyTeaVMToolLog());
        tool.setClassLoader(ToWebAssembly.class.getClassLoader());
        tool.getTransformers().add(NoRecordWords.class.getName());
        tool.generate();
        List<String> problems = new ArrayList<>();
        for (Problem problem : tool.getProblemProvider().getProblems()) {
            DefaultProblemTextConsumer words = new DefaultProblemTextConsumer();
            problem.render(words);
            problems.add(words.getText() + ", from " + problem.getLocation().getMethod());
        }
        if (!problems.isEmpty())
            throw new IllegalStateException("The engine uses what a browser lacks: " + String.join("; ", problems));
    }

    /** Packed once here, so that a server has nothing to pack. */
    private void pack() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream out = new Hardest(packed)) {
            out.write(Files.readAllBytes(folder.resolve(MODULE)));
        }
        Files.write(folder.resolve(MODULE + ".gz"), packed.toByteArray());
    }

    private static final class Hardest extends GZIPOutputStream {
        Hardest(OutputStream out) throws IOException {
            super(out);
            def.setLevel(Deflater.BEST_COMPRESSION);
        }
    }
}
