package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
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
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.engine.schedule.JobPlan;
import plumbleaf.engine.schedule.YardCalendar;
import plumbleaf.jobfile.calendar.CalendarDate;
import plumbleaf.jobfile.calendar.CalendarFile;
import plumbleaf.jobfile.calendar.HouseDaysFile;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** The days of several jobs side by side. */
@Command(
        name = "calendar",
        description = "Lays the work of one or more jobs in days, without two jobs on one crew.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Jobs are laid in the order given, without what is done or billed to the end; digging waits for a job's locate ticket. Call before you dig."
        })
final class CalendarVerb implements Callable<Integer> {
    private static final int MOST_CREWS = 50;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Job files, the first first.")
    private List<Path> files = List.of();

    @Option(names = "--from", required = true, paramLabel = "DATE", description = "First day anyone is free.")
    private String from = "";

    @Option(
            names = "--house",
            paramLabel = "CSV",
            description = "Who and what the house works with: crews, machines, days off, days kept for rain.")
    private String house = "";

    @Option(names = "--crews", paramLabel = "N", description = "Crews at work at once. Default: the house's, or 1.")
    private int crews;

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
        if (crews < 0 || crews > MOST_CREWS)
            throw BadInput.of("plumbleaf calendar", "--crews " + crews + " is not a number of crews", "write 1 to 50");
        List<LocalDate> daysOff = new ArrayList<>();
        for (String day : off) daysOff.add(date("--off", day));
        List<JobPlan> plans = new ArrayList<>();
        List<CalendarDate> dates = new ArrayList<>();
        for (Path file : files) {
            Design design = Designed.from(file).design();
            plans.add(plan(design, first));
            dates.addAll(CalendarDate.of(design));
        }
        List<Booking> bookings = new ArrayList<>(laid(plans, daysOff, first));
        bookings.sort(Comparator.comparing(Booking::first));
        if (!out.isEmpty())
            Written.text(
                    Path.of(out),
                    CalendarFile.of(bookings, dates, first, List.of("Call before you dig; check the locate ticket.")),
                    over);
        answer.document(Json.object()
                .put("from", first.toString())
                .put("bookings", bookings, CalendarVerb::json)
                .put("dates", dates, CalendarVerb::json)
                .build());
        Columns columns = new Columns("llllll");
        for (Booking booking : bookings)
            columns.row(
                    booking.first() + (booking.afternoon() ? " noon" : ""),
                    booking.last() + (booking.untilNoon() ? " noon" : ""),
                    booking.who(),
                    booking.job(),
                    booking.name(),
                    String.join(", ", booking.machines()));
        answer.say(columns.lines(0));
        for (Booking booking : bookings)
            for (String note : booking.notes()) answer.say(booking.first() + ", " + booking.job() + ": " + note);
        for (CalendarDate date : dates) answer.say(date.day() + ", " + date.job() + ": " + date.words());
        if (!out.isEmpty()) answer.say("Wrote " + out + ".");
        return ExitCode.FINE;
    }

    private List<Booking> laid(List<JobPlan> plans, List<LocalDate> daysOff, LocalDate first) {
        try {
            return YardCalendar.of(plans, house().alsoOff(daysOff), first);
        } catch (IllegalArgumentException cannot) {
            throw BadInput.of(
                    "plumbleaf calendar", String.valueOf(cannot.getMessage()), "give the house what it needs");
        }
    }

    private HouseDays house() {
        if (house.isEmpty()) return HouseDays.usual(Math.max(1, crews));
        HouseDaysFile.Answer read =
                HouseDaysFile.read(house, new String(JobDoor.bytes(Path.of(house)), StandardCharsets.UTF_8));
        if (!read.errors().isEmpty()) throw new BadInput(read.errors());
        HouseDays said = read.house().get(0);
        return crews == 0 ? said : said.withCrews(crews);
    }

    private static JobPlan plan(Design design, LocalDate first) {
        return JobPlan.of(design.job(), design.quote(), first);
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
                .put("machines", booking.machines(), Json::text)
                .put("notes", booking.notes(), Json::text)
                .build();
    }

    private static Node json(CalendarDate date) {
        return Json.object()
                .put("job", date.job())
                .put("day", date.day().toString())
                .put("words", date.words())
                .build();
    }
}
