package plumbleaf.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import plumbleaf.engine.catalogue.Catalogue;

/** A file of the house's own fence styles, for jobs that name none; what a job names itself goes before it. */
final class HouseStyles {
    static final HouseStyles NONE = new HouseStyles();

    @Option(
            names = "--styles",
            paramLabel = "STYLES",
            description = "A file of your own fence styles. One that the job names goes before it.")
    private String file = "";

    /** The catalogue for a job: the program's styles, then these, then those of the file that the job names. */
    Catalogue catalogueOf(Path job) {
        Catalogue house = JobDoor.catalogue();
        if (!file.isEmpty()) house = JobDoor.withStyles(Path.of(file), house);
        return JobDoor.catalogue(job, house);
    }
}
