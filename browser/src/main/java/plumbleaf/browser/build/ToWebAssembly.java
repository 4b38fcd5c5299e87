package plumbleaf.browser.build;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import org.teavm.dependency.PreciseDependencyAnalyzer;
import org.teavm.diagnostics.DefaultProblemTextConsumer;
import org.teavm.diagnostics.Problem;
import org.teavm.model.PreOptimizingClassHolderSource;
import org.teavm.model.ReferenceCache;
import org.teavm.parsing.ClasspathClassHolderSource;
import org.teavm.parsing.ClasspathResourceProvider;
import org.teavm.parsing.resource.ResourceProvider;
import org.teavm.parsing.substitution.DefaultSubstituteClassNameMapping;
import org.teavm.vm.DirectoryBuildTarget;
import org.teavm.vm.TeaVM;
import org.teavm.vm.TeaVMBuilder;
import org.teavm.vm.TeaVMOptimizationLevel;

/** Compiles the engine to one WebAssembly module and what unpacks it to another, unless it has them already. Called by the build with the folder of the page's files. */
public final class ToWebAssembly {
    private static final String MODULE = "engine.wasm";
    private static final String PACKED = "engine.packed";
    private static final String ENTRY = "plumbleaf.browser.PageEngine";
    private static final String UNPACKING = "unpack.wasm";
    private static final String UNPACKING_ENTRY = "plumbleaf.browser.packed.PageUnpacking";

    private final Path folder;
    private final Path made;
    private final Path stamp;

    private ToWebAssembly(Path folder, Path made, Path stamp) {
        this.folder = folder;
        this.made = made;
        this.stamp = stamp;
    }

    /** @param words the folder that the packed module goes to, that for the module itself, which only tests see, and the file that remembers what it was made of */
    public static void main(String[] words) throws IOException {
        new ToWebAssembly(Path.of(words[0]), Path.of(words[1]), Path.of(words[2])).make();
    }

    private void make() throws IOException {
        String inputs = Inputs.digest(classPath());
        if (Files.exists(folder.resolve(PACKED))
                && Files.exists(folder.resolve(UNPACKING))
                && Files.exists(made.resolve(MODULE))
                && Files.exists(stamp)
                && Files.readString(stamp, StandardCharsets.UTF_8).equals(inputs)) return;
        Files.deleteIfExists(stamp);
        Files.createDirectories(folder);
        Files.createDirectories(made);
        compile(ENTRY, made, MODULE, Set.of());
        compile(UNPACKING_ENTRY, made, UNPACKING, Set.of("room", "give", "unpack", "word"));
        pack();
        Files.writeString(stamp, inputs, StandardCharsets.UTF_8);
    }

    private static List<Path> classPath() {
        List<Path> parts = new ArrayList<>();
        for (String part : System.getProperty("java.class.path").split(File.pathSeparator, -1))
            parts.add(Path.of(part));
        return parts;
    }

    /** @param asked what a page asks of it by name; empty where that is all that the compiler lets it ask, and then it is strict */
    static void compile(String entry, Path into, String name, Set<String> asked) throws IOException {
        ClassLoader loader = ToWebAssembly.class.getClassLoader();
        LeanTarget target = new LeanTarget(asked);
        target.setObfuscated(true);
        TeaVMBuilder builder = new TeaVMBuilder(target);
        ReferenceCache references = new ReferenceCache();
        ResourceProvider files = new ClasspathResourceProvider(loader);
        builder.setReferenceCache(references);
        builder.setClassLoader(loader);
        builder.setResourceProvider(files);
        builder.setClassSource(new PreOptimizingClassHolderSource(new ClasspathClassHolderSource(
                files, references, new OwnPatterns(DefaultSubstituteClassNameMapping.createWithSPI(loader)))));
        builder.setDependencyAnalyzerFactory(PreciseDependencyAnalyzer::new);
        builder.setObfuscated(true);
        builder.setStrict(asked.isEmpty());
        TeaVM compiler = builder.build();
        compiler.setProperties(new Properties());
        compiler.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        compiler.installPlugins();
        compiler.add(new NoRecordWords());
        compiler.add(new OwnSines());
        compiler.add(new AskedPatterns());
        compiler.setEntryPoint(entry);
        compiler.setEntryPointName("main");
        compiler.build(new DirectoryBuildTarget(into.toFile()), name);
        List<String> problems = new ArrayList<>();
        for (Problem problem : compiler.getProblemProvider().getProblems()) {
            DefaultProblemTextConsumer words = new DefaultProblemTextConsumer();
            problem.render(words);
            problems.add(words.getText() + ", from " + problem.getLocation().getMethod());
        }
        if (!problems.isEmpty())
            throw new IllegalStateException(entry + " uses what a browser lacks: " + String.join("; ", problems));
    }

    /** Packed once here: whoever serves it has nothing to pack. */
    private void pack() throws IOException {
        Files.write(folder.resolve(PACKED), Packing.of(Files.readAllBytes(made.resolve(MODULE))));
        Files.write(folder.resolve(UNPACKING), Summed.module(Files.readAllBytes(made.resolve(UNPACKING))));
    }
}
