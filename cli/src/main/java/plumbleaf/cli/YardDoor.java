package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import picocli.CommandLine.Option;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.jobfile.stock.YardFile;

/** The yard's file as an option of the verbs that use what lies there. */
final class YardDoor {
    @Option(
            names = "--yard",
            paramLabel = "YARD",
            description = "The yard's file: bars, offcuts and goods in it are used before anything is bought.")
    private String file = "";

    Counted yard() {
        return file.isEmpty() ? Counted.NONE : counted(Path.of(file));
    }

    /** A yard and where its file is: a job is known in it by the place of its own file, seen from there. */
    record Counted(Yard yard, Path at) {
        static final Counted NONE = new Counted(Yard.empty(), Path.of(""));

        Taker taker(Path job, String title) {
            Path place = job.toAbsolutePath().normalize();
            Path file = at.toAbsolutePath().normalize();
            Path folder = Objects.requireNonNullElse(file.getParent(), file);
            boolean together = Objects.equals(folder.getRoot(), place.getRoot());
            return new Taker(
                    title,
                    (together ? folder.relativize(place) : place).toString().replace('\\', '/'));
        }
    }

    static Counted counted(Path path) {
        return new Counted(read(path), path);
    }

    /** Every bad row at once. */
    private static Yard read(Path path) {
        YardFile.Answer answer =
                YardFile.read(path.toString(), new String(JobDoor.bytes(path), StandardCharsets.UTF_8));
        if (!answer.errors().isEmpty()) throw new BadInput(answer.errors());
        return answer.yard();
    }
}
