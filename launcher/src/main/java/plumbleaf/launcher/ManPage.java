package plumbleaf.launcher;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page in the man macros of roff, from what every verb says of itself, so that it cannot say less than {@code --help}. */
final class ManPage {
    private static final String NAME = "plumbleaf";
    private final StringBuilder page = new StringBuilder();

    private ManPage() {}

    static String of(CommandLine line) {
        ManPage man = new ManPage();
        CommandSpec spec = line.getCommandSpec();
        String version = String.join(" ", spec.version());
        man.line(".TH " + NAME.toUpperCase(Locale.ROOT) + " 1 \"\" \"" + escaped(version) + "\" \"User Commands\"");
        man.line(".SH NAME");
        man.line(escaped(NAME + " - " + inShort(spec)));
        man.line(".SH SYNOPSIS");
        man.line(".B " + NAME);
        man.line(".I VERB");
        man.line("[options]");
        man.line(".br");
        man.line(".B " + NAME + " " + escaped("--help | --version"));
        man.line(".SH DESCRIPTION");
        man.text(spec.usageMessage().description());
        man.line(".SH VERBS");
        for (Map.Entry<String, CommandLine> verb : line.getSubcommands().entrySet()) {
            CommandSpec of = verb.getValue().getCommandSpec();
            if (!of.usageMessage().hidden() && !verb.getKey().equals("help")) man.verb(verb.getKey(), of);
        }
        man.line(".SH EXIT STATUS");
        for (String code : List.of(
                "0 fine",
                "1 our fault",
                "2 wrong usage, or a file that cannot be used",
                "3 a finding that must be fixed")) {
            man.line(".TP");
            man.line(".B " + code.substring(0, 1));
            man.line(escaped(code.substring(2)));
        }
        man.line(".SH ENVIRONMENT");
        man.item(
                "PLUMBLEAF_STORE",
                "Where jobs are kept, for the verbs that have --store: a file, or jdbc:postgresql://...");
        man.item(
                "XDG_DATA_HOME", "The data folder; jobs are kept in plumbleaf/jobs.db there. Default: ~/.local/share.");
        man.line(".SH CAUTION");
        man.line("Results are for review; local code governs.");
        return man.page.toString();
    }

    private void verb(String name, CommandSpec spec) {
        line(".SS " + escaped(usage(name, spec)));
        text(spec.usageMessage().description());
        for (PositionalParamSpec file : spec.positionalParameters())
            if (!file.hidden()) item(file.paramLabel(), described(file));
        for (OptionSpec option : spec.options()) {
            boolean everywhere = option.usageHelp() || option.versionHelp();
            if (!option.hidden() && !everywhere) item(names(option), described(option));
        }
    }

    private static String usage(String name, CommandSpec spec) {
        StringBuilder usage = new StringBuilder(name);
        for (PositionalParamSpec file : spec.positionalParameters())
            if (!file.hidden()) usage.append(' ').append(file.paramLabel());
        return usage.toString();
    }

    private static String names(OptionSpec option) {
        String value = option.arity().max() == 0
                ? ""
                : "=" + option.paramLabel().replace('<', ' ').replace('>', ' ').strip();
        List<String> names = new ArrayList<>();
        for (String name : option.names()) names.add(name + (name.startsWith("--") ? value : ""));
        return String.join(", ", names);
    }

    private static String described(ArgSpec argument) {
        return String.join(" ", argument.description())
                .replace("${DEFAULT-VALUE}", String.valueOf(argument.initialValue()));
    }

    private void item(String name, String what) {
        line(".TP");
        line(".B " + escaped(name));
        line(escaped(what));
    }

    private void text(String[] lines) {
        line(escaped(String.join(" ", lines)));
    }

    private void line(String line) {
        page.append(line).append('\n');
    }

    /** The first sentence, without its end, as {@code whatis} wants it. */
    private static String inShort(CommandSpec spec) {
        String whole = String.join(" ", spec.usageMessage().description());
        int end = whole.indexOf(':');
        return (end < 0 ? whole : whole.substring(0, end)).toLowerCase(Locale.ROOT);
    }

    private static String escaped(String text) {
        String plain = text.replace("\\", "\\e").replace("-", "\\-").replace("%n", " ");
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
