package plumbleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Json;

/** Which Plumbleaf this is, and which job files it reads. */
@Command(name = "version", description = "Says which version this is.", mixinStandardHelpOptions = true)
final class VersionVerb implements Callable<Integer> {
    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() throws IOException {
        answer.document(Json.object()
                .put("plumbleaf", version())
                .put("jobFormat", JobFile.FORMAT)
                .put("jobVersion", JobFile.VERSION)
                .build());
        answer.say("Plumbleaf " + version() + ", job files of version " + JobFile.VERSION);
        return ExitCode.FINE;
    }

    private static String version() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = VersionVerb.class.getResourceAsStream("version.properties")) {
            if (in == null) throw new IllegalStateException("The command line was built without its version");
            properties.load(in);
        }
        return properties.getProperty("version", "");
    }

    /** For {@code --version}. */
    static final class Provider implements IVersionProvider {
        @Override
        public String[] getVersion() throws IOException {
            return new String[] {"Plumbleaf " + version()};
        }
    }
}
