package plumbleaf.web.room;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.jobfile.catalogue.StyleFile;

/** The company's own fence styles: one file, named when the workspace starts; none is fine. */
@Component
public class OwnStyles {
    private final String file;

    OwnStyles(@Value("${plumbleaf.styles:}") String file) {
        this.file = file;
    }

    /** A file with an error in it stops the start, with the first thing that is wrong. */
    Catalogue addedTo(Catalogue standard) {
        if (file.isBlank()) return standard;
        return StyleFile.added(file, bytes(Path.of(file)), standard)
                .match(good -> standard.withStyles(good.styles()), bad -> {
                    throw new IllegalArgumentException(bad.all().get(0).text());
                });
    }

    /** The file as it stands, for a device that designs by itself; empty where there is none. */
    public String text() {
        return file.isBlank() ? "" : new String(bytes(Path.of(file)), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            throw new UncheckedIOException("The style file " + path + " cannot be read", e);
        }
    }
}
