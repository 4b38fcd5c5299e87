package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** Price books for the command line: one that comes with the program, or a folder of four tables beside the job file. */
final class Books {
    private static final String MATERIALS = "materials.csv";
    private static final String LABOUR = "labor.csv";
    private static final String CHARGES = "charges.csv";
    private static final String HOUSE = "house.csv";

    private Books() {}

    /** The book that a job names, with the prices the job keeps. */
    static PriceBook of(Path jobFile, Job job) {
        return PriceBooks.kept(job, named(jobFile, job.money().priceBook()));
    }

    /** The book as it stands today, whatever the job keeps. */
    static PriceBook named(Path jobFile, String id) {
        Path folder = beside(jobFile, id);
        if (Files.isDirectory(folder)) return read(folder);
        return PriceBooks.standard(id)
                .orElseThrow(() -> BadInput.of(
                        jobFile.toString(),
                        "there is no price book " + id,
                        "write " + PriceBooks.STANDARD.get(0) + ", or lay a folder " + id
                                + " with its tables beside the job (plumbleaf book new " + id + ")"));
    }

    /** The four tables of a folder; every bad row of all of them otherwise. */
    static PriceBook read(Path folder) {
        PriceBooks.Answer answer = PriceBooks.read(
                String.valueOf(folder.getFileName()),
                source(folder, MATERIALS),
                source(folder, LABOUR),
                source(folder, CHARGES),
                source(folder, HOUSE));
        if (!answer.errors().isEmpty()) throw new BadInput(answer.errors());
        return answer.book().get(0);
    }

    static PriceBooks.Source source(Path folder, String name) {
        Path file = folder.resolve(name);
        return new PriceBooks.Source(file.toString(), new String(JobDoor.bytes(file), StandardCharsets.UTF_8));
    }

    private static Path beside(Path jobFile, String id) {
        Path parent = jobFile.toAbsolutePath().getParent();
        return parent == null ? Path.of(id) : parent.resolve(id);
    }
}
