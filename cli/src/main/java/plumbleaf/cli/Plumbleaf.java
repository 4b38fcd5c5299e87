package plumbleaf.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;

/** The command itself: without a verb it says which there are. */
@Command(
        name = "plumbleaf",
        description = "Fences and gates on sloping ground: measured once, then designed, checked, priced and drawn.",
        synopsisSubcommandLabel = "VERB",
        versionProvider = VersionVerb.Provider.class,
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Exit codes: 0 fine, 1 our fault, 2 wrong usage or bad file, 3 must-fix findings.",
            "Results are for review; local code governs."
        })
public final class Plumbleaf implements Runnable {
    private static final String HELP = "help";
    private static final String COMPLETION = "generate-completion";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** By their names, in the order that help tells them in. */
    private static final Map<String, Class<?>> VERBS = verbs();

    private static Map<String, Class<?>> verbs() {
        Map<String, Class<?>> verbs = new LinkedHashMap<>();
        verbs.put("new", NewVerb.class);
        verbs.put("check", CheckVerb.class);
        verbs.put("design", DesignVerb.class);
        verbs.put("choose", ChooseVerb.class);
        verbs.put("cut", CutVerb.class);
        verbs.put("cutlist", CutListVerb.class);
        verbs.put("order", OrderVerb.class);
        verbs.put("load", LoadVerb.class);
        verbs.put("yard", YardVerb.class);
        verbs.put("price", PriceVerb.class);
        verbs.put("book", BookVerb.class);
        verbs.put("change", ChangeVerb.class);
        verbs.put("bill", BillVerb.class);
        verbs.put("calendar", CalendarVerb.class);
        verbs.put("hours", HoursVerb.class);
        verbs.put("learn", LearnVerb.class);
        verbs.put("draw", DrawVerb.class);
        verbs.put("papers", PapersVerb.class);
        verbs.put("shots", ShotsVerb.class);
        verbs.put("parts", PartsVerb.class);
        verbs.put(HELP, HelpCommand.class);
        verbs.put("version", VersionVerb.class);
        verbs.put(COMPLETION, GenerateCompletion.class);
        return verbs;
    }

    /** The command line with all its verbs; a launcher may add some of its own. */
    public static CommandLine commandLine() {
        return with(VERBS.values());
    }

    /**
     * The command line with the one verb that these words ask for, since making all of them ready takes a cold process longer than most of them run; empty where the
     * first word is none of them, or one that tells of the others.
     */
    public static Optional<CommandLine> ofVerb(List<String> words) {
        if (words.isEmpty() || words.get(0).equals(HELP) || words.get(0).equals(COMPLETION)) return Optional.empty();
        return Optional.<Class<?>>ofNullable(VERBS.get(words.get(0))).map(verb -> with(List.of(verb)));
    }

    private static CommandLine with(Collection<Class<?>> verbs) {
        CommandLine line = new CommandLine(new Plumbleaf());
        for (Class<?> verb : verbs) line.addSubcommand(verb);
        line.setUsageHelpAutoWidth(true);
        line.setParameterExceptionHandler(Plumbleaf::wrongUsage);
        line.setExecutionExceptionHandler(Plumbleaf::fault);
        return line;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int wrongUsage(ParameterException wrong, String[] arguments) {
        CommandLine command = wrong.getCommandLine();
        String verb = command.getCommandSpec().qualifiedName();
        String problem = plainWords(String.valueOf(wrong.getMessage()));
        List<String> near =
                wrong instanceof UnmatchedArgumentException unmatched ? unmatched.getSuggestions() : List.of();
        String cure = near.isEmpty() ? "see " + verb + " --help" : "did you mean " + near.get(0) + "?";
        InputError error = InputError.ofFile(verb, problem, cure);
        return answer(command, List.of(arguments).contains("--json"), List.of(error));
    }

    /** The parser's sentence in the form of ours: small first letter, no full stop, one line. */
    private static String plainWords(String message) {
        String line = message.lines().findFirst().orElse("").strip();
        if (line.endsWith(".")) line = line.substring(0, line.length() - 1);
        boolean acronym = line.length() > 1 && Character.isUpperCase(line.charAt(1));
        return line.isEmpty() || acronym ? line : Character.toLowerCase(line.charAt(0)) + line.substring(1);
    }

    private static int fault(Exception thrown, CommandLine command, ParseResult parsed) {
        boolean json = command.getParseResult().hasMatchedOption("--json");
        if (thrown instanceof BadInput bad) return answer(command, json, bad.errors());
        PrintWriter err = command.getErr();
        String words = String.valueOf(thrown.getMessage()).lines().findFirst().orElse("");
        err.print(
                "plumbleaf: this is our fault, not yours: " + thrown.getClass().getSimpleName() + ": " + words + "\n");
        err.flush();
        return ExitCode.OUR_FAULT;
    }

    private static int answer(CommandLine command, boolean json, List<InputError> errors) {
        PrintWriter err = command.getErr();
        for (InputError error : errors) err.print(error.text() + "\n");
        err.flush();
        if (json) {
            PrintWriter out = command.getOut();
            out.print(JsonWriter.write(Json.object()
                    .put("errors", new ArrayList<>(errors), InputError::json)
                    .build()));
            out.flush();
        }
        return ExitCode.BAD_INPUT;
    }
}
