package plumbleaf.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.schedule.Booking;
import plumbleaf.engine.schedule.JobPlan;
import plumbleaf.engine.schedule.WorkingDays;
import plumbleaf.engine.schedule.YardCalendar;
import plumbleaf.jobfile.calendar.CalendarFile;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** The days of several jobs side by side. */
@Command(
        name = "calendar",
        description = "Lays the work of one or more jobs in days, without two jobs on one crew.",
        mixinStandardHelpOptions = true,
        footer = {"", "Jobs are laid in the order given; digging waits for a job's locate ticket. Call before you dig."
        })
final class CalendarVerb implements Callable<Integer> {
    private static final int MOST_CREWS = 50;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Job files, the first first.")
    private List<Path> files = List.of();

    @Option(names = "--from", required = true, paramLabel = "DATE", description = "First day anyone is free.")
    private String from = "";

    @Option(names = "--crews", paramLabel = "N", description = "Crews at work at once. Default: ${DEFAULT-VALUE}.")
    private int crews = 1;

    @Option(names = "--off", paramLabel = "DATE", description = "A day nobody works; give it once a day.")
    private List<String> off = new ArrayList<>();

    @Option(names = "--out", paramLabel = "ICS", description = "Write it as an iCalendar file as well.")
    private String out = "";

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        LocalDate first = date("--from", from);
        if (crews < 1 || crews > MOST_CREWS)
            throw BadInput.of("plumbleaf calendar", "--crews " + crews + " is not a number of crews", "write 1 to 50");
        List<LocalDate> daysOff = new ArrayList<>();
        for (String day : off) daysOff.add(date("--off", day));
        List<JobPlan> plans = new ArrayList<>();
        for (Path file : files) plans.add(plan(Designed.from(file).design(), first));
        List<Booking> bookings = new ArrayList<>(YardCalendar.of(plans, new WorkingDays(first, daysOff), crews));
        bookings.sort(Comparator.comparing(Booking::first));
        if (!out.isEmpty())
            Written.text(
                    Path.of(out),
                    CalendarFile.of(bookings, first, List.of("Call before you dig; check the locate ticket.")),
                    over);
        answer.document(Json.object()
                .put("from", first.toString())
                .put("bookings", bookings, CalendarVerb::json)
                .build());
        Columns columns = new Columns("lllll");
        for (Booking booking : bookings)
            columns.row(
                    booking.first() + (booking.afternoon() ? " noon" : ""),
                    booking.last() + (booking.untilNoon() ? " noon" : ""),
                    booking.who(),
                    booking.job(),
                    booking.name());
        answer.say(columns.lines(0));
        if (!out.isEmpty()) answer.say("Wrote " + out + ".");
        return ExitCode.FINE;
    }

    private static JobPlan plan(Design design, LocalDate first) {
        return JobPlan.of(design.job(), design.quote().schedule(), first);
    }

    private static LocalDate date(String option, String text) {
        return TextKind.DATE.read().apply(text).match(read -> read.is(), refused -> {
            throw BadInput.of("plumbleaf calendar", option + " " + text + ": " + refused.problem(), refused.cure());
        });
    }

    private static Node json(Booking booking) {
        return Json.object()
                .put("job", booking.job())
                .put("key", booking.key())
                .put("name", booking.name())
                .put("who", booking.who())
                .put("first", booking.first().toString())
                .put("afternoon", booking.afternoon())
                .put("last", booking.last().toString())
                .put("untilNoon", booking.untilNoon())
                .build();
    }
}
