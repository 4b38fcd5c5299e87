package plumbleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StyleFile;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.Intake;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;

/** Files at the door: what is missing, a folder or too large is refused before it is read. */
final class JobDoor {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();

    private JobDoor() {}

    static Catalogue catalogue() {
        return CATALOGUE;
    }

    /** The catalogue for a job: with the styles of the file that it names, which lies beside it. */
    static Catalogue catalogue(Path job) {
        return catalogue(job, CATALOGUE);
    }

    /** The same over a catalogue that has the house's styles already. */
    static Catalogue catalogue(Path job, Catalogue house) {
        return StyleFile.namedBy(bytes(job))
                .map(name -> withStyles(job.resolveSibling(name), house))
                .orElse(house);
    }

    static Catalogue withStyles(Path file, Catalogue to) {
        return StyleFile.added(file.toString(), bytes(file), to).match(good -> to.withStyles(good.styles()), bad -> {
            throw new BadInput(bad.all());
        });
    }

    /** The job in a file, with the gaps of a draft; every error of the file otherwise. */
    static JobReading.Good job(Path file) {
        return job(file, catalogue(file));
    }

    static JobReading.Good job(Path file, Catalogue catalogue) {
        return JobFile.read(file.toString(), bytes(file), catalogue).match(good -> good, bad -> {
            throw new BadInput(bad.all());
        });
    }

    /** The file as a tree, once it has been read as a job, so that it is JSON. */
    static Node tree(Path file) {
        return tree(file, catalogue(file));
    }

    static Node tree(Path file, Catalogue catalogue) {
        job(file, catalogue);
        return JsonReader.read(new String(bytes(file), StandardCharsets.UTF_8).replace("\ufeff", ""))
                .match(tree -> tree.root(), broken -> Json.nothing());
    }

    static byte[] bytes(Path file) {
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) throw BadInput.of(name, "this is a folder", "name a file in it");
            long size = Files.size(file);
            if (size > Intake.LARGEST_BYTES)
                throw new BadInput(List.of(
                        InputError.ofFile(name, Intake.tooLarge(name, size).problem(), "give a smaller file")));
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw BadInput.of(name, "there is no such file", "check the name and the folder");
        } catch (IOException e) {
            throw BadInput.of(name, "this file cannot be read", "check that you may read it");
        }
    }
}
