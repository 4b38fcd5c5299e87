package plumbleaf.browser.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.teavm.model.ClassHolder;
import org.teavm.model.ReferenceCache;
import org.teavm.parsing.ClasspathClassHolderSource;
import org.teavm.parsing.ClasspathResourceProvider;
import plumbleaf.browser.PageEngine;
import plumbleaf.browser.build.AskedPatterns.Asked;
import plumbleaf.browser.pattern.SameMatches;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.engine.design.Design;
import plumbleaf.jobfile.job.JobFile;

/** Every pattern that stands in a class of the modules that a page has, read out of the compiled classes, finds in a page what it finds in Java. */
class EveryPatternTest {
    private static final List<Class<?>> OF_EACH_MODULE =
            List.of(Design.class, ProvenCutPlanner.class, JobFile.class, PacketSubjects.class, PageEngine.class);

    private static final int TEXTS = 300;

    @Test
    void findsTheSameMatchesGroupsAndParts() throws Exception {
        Set<Asked> all = asked();
        assertThat(all)
                .as("the patterns were not found")
                .hasSizeGreaterThan(50)
                .contains(new Asked("px$", 0), new Asked("0|[1-9][0-9]{0,8}", 0))
                .anyMatch(one -> one.flags() == java.util.regex.Pattern.CASE_INSENSITIVE);
        for (Asked one : all) SameMatches.compare(one.pattern(), one.flags(), TEXTS);
    }

    private static Set<Asked> asked() throws IOException, URISyntaxException {
        ClassLoader loader = Objects.requireNonNull(EveryPatternTest.class.getClassLoader());
        ReferenceCache references = new ReferenceCache();
        ClasspathClassHolderSource classes =
                new ClasspathClassHolderSource(new ClasspathResourceProvider(loader), references, loader);
        Set<Asked> all = new LinkedHashSet<>();
        for (Class<?> one : OF_EACH_MODULE) {
            for (String name : names(one)) {
                ClassHolder read = classes.get(name);
                if (read != null) all.addAll(AskedPatterns.of(read));
            }
        }
        return all;
    }

    private static List<String> names(Class<?> of) throws IOException, URISyntaxException {
        Path place =
                Path.of(of.getProtectionDomain().getCodeSource().getLocation().toURI());
        if (Files.isDirectory(place)) return names(place);
        try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), java.util.Map.of())) {
            return names(jar.getPath("/"));
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            List<String> names = new ArrayList<>();
            walk.map(file -> folder.relativize(file).toString())
                    .filter(name -> name.endsWith(".class") && name.startsWith("plumbleaf"))
                    .sorted()
                    .forEach(name -> names.add(name.substring(0, name.length() - 6)
                            .replace('\\', '.')
                            .replace('/', '.')));
            return names;
        }
    }
}
