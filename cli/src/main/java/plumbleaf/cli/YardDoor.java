package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.jobfile.stock.YardFile;

/** The yard's file as an option of the verbs that use what lies there. */
final class YardDoor {
    @Option(
            names = "--yard",
            paramLabel = "YARD",
            description = "The yard's file: bars, offcuts and goods in it are used before anything is bought.")
    private String file = "";

    Yard yard() {
        return file.isEmpty() ? Yard.empty() : read(Path.of(file));
    }

    /** Every bad row at once. */
    static Yard read(Path path) {
        YardFile.Answer answer =
                YardFile.read(path.toString(), new String(JobDoor.bytes(path), StandardCharsets.UTF_8));
        if (!answer.errors().isEmpty()) throw new BadInput(answer.errors());
        return answer.yard();
    }
}
