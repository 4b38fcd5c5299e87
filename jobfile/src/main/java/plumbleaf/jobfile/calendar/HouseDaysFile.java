package plumbleaf.jobfile.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.schedule.DayOff;
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.engine.schedule.Machine;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;
import plumbleaf.jobfile.table.SafeCsv;

/** The file of who and what the house works with: one row for each number of the house, each machine and each stretch of days off. */
public final class HouseDaysFile {
    private static final List<String> COLUMNS = List.of("kind", "name", "count", "for", "from", "through", "why");
    private static final String CREWS = "crews";
    private static final String COLD = "cold cure days";
    private static final String RAIN = "rain pct";
    private static final int MOST = 50;
    private static final int MOST_DAYS = 60;
    private static final LocalDate SOME_DAY = LocalDate.of(2000, 1, 1);

    private HouseDaysFile() {}

    /**
     * A house, or what is wrong with its file.
     *
     * @param house one, or none where there are errors
     */
    public record Answer(List<HouseDays> house, List<InputError> errors) {
        public Answer {
            house = List.copyOf(house);
            errors = List.copyOf(errors);
        }
    }

    /** What a row says, one of the three. */
    private record Said(String name, double number, List<Machine> machine, List<DayOff> off) {}

    public static Answer read(String file, String text) {
        Set<String> seen = new LinkedHashSet<>();
        CsvTable<Said> table = CsvTable.read(file, text, COLUMNS, row -> said(row, seen));
        List<InputError> errors = new ArrayList<>(table.errors());
        double crews = 1;
        double cold = HouseDays.usual(1).coldCureDays();
        double rain = HouseDays.usual(1).rain();
        List<Machine> machines = new ArrayList<>();
        List<DayOff> off = new ArrayList<>();
        for (Said said : table.rows()) {
            machines.addAll(said.machine());
            off.addAll(said.off());
            if (said.name().equals(CREWS)) crews = said.number();
            if (said.name().equals(COLD)) cold = said.number();
            if (said.name().equals(RAIN)) rain = said.number() / 100;
        }
        for (DayOff day : off)
            if (!works(day.who(), (int) crews, machines))
                errors.add(InputError.ofFile(
                        file,
                        "nobody and nothing here goes by " + day.who() + ", which is off from " + day.from(),
                        "write everyone, shop, crew 1 to " + (int) crews + ", or a machine of the file"));
        if (!errors.isEmpty()) return new Answer(List.of(), errors);
        return new Answer(List.of(new HouseDays((int) crews, (int) cold, rain, machines, off)), List.of());
    }

    /** Whether days off can be those of this one. */
    public static boolean works(String who, int crews, List<Machine> machines) {
        if (who.equals(DayOff.EVERYONE) || who.equals("shop")) return true;
        for (int i = 1; i <= crews; i++) if (who.equals("crew " + i)) return true;
        return machines.stream().anyMatch(machine -> machine.name().equals(who));
    }

    private static Said said(CsvRow row, Set<String> seen) {
        String kind = row.oneOf("kind", List.of("house", "machine", "off"));
        String name = row.needed("name");
        return switch (kind) {
            case "machine" -> {
                if (!seen.add(name)) row.error("name", "this machine is here twice", "count both in one row");
                yield new Said("", 0, List.of(new Machine(label(name), whole(row, 1, MOST), phases(row))), List.of());
            }
            case "off" -> {
                LocalDate from = row.read("from", TextKind.DATE.read(), SOME_DAY);
                LocalDate through =
                        row.text("through").isEmpty() ? from : row.read("through", TextKind.DATE.read(), SOME_DAY);
                if (through.isBefore(from)) row.error("through", "this is before its first day", "turn the two round");
                yield new Said("", 0, List.of(), List.of(new DayOff(label(name), from, through, row.text("why"))));
            }
            default -> {
                String which = row.oneOf("name", List.of(CREWS, COLD, RAIN));
                double number = which.equals(RAIN)
                        ? row.number("count", 0, 100)
                        : whole(row, which.equals(CREWS) ? 1 : 0, which.equals(CREWS) ? MOST : MOST_DAYS);
                yield new Said(which, number, List.of(), List.of());
            }
        };
    }

    /** Never empty, so that a bad row still makes something to go on with. */
    private static String label(String name) {
        return name.isBlank() ? "?" : name;
    }

    private static int whole(CsvRow row, int least, int most) {
        double count = row.number("count", least, most);
        if (count != Math.rint(count)) row.error("count", "this is not a whole number", "write a whole number");
        return (int) Math.rint(count);
    }

    private static List<Phase> phases(CsvRow row) {
        List<Phase> phases = new ArrayList<>();
        for (String word : row.needed("for").split(" +", -1)) {
            if (word.isEmpty()) continue;
            Phase.of(word)
                    .ifPresentOrElse(
                            phases::add,
                            () -> row.error(
                                    "for",
                                    "there is no work " + word,
                                    "write some of tear-out, shop, set, build, hang and finish, with spaces between"));
        }
        return phases;
    }

    public static String write(HouseDays house) {
        SafeCsv csv = new SafeCsv()
                .remark(
                        "Who and what works, and when not. kind house: crews, cold cure days (between pouring and hanging while it may freeze),"
                                + " rain pct (of a job's days on site kept for rain).")
                .remark(
                        "kind machine: how many there are, and for which work one is taken. kind off: everyone, shop, crew 1 and so on, or a machine.")
                .row(COLUMNS)
                .row("house", CREWS, Integer.toString(house.crews()), "", "", "", "")
                .row("house", COLD, Integer.toString(house.coldCureDays()), "", "", "", "")
                .row("house", RAIN, DecimalText.upTo(house.rain() * 100, 2), "", "", "", "");
        for (Machine machine : house.machines())
            csv.row(
                    "machine",
                    machine.name(),
                    Integer.toString(machine.count()),
                    String.join(" ", machine.phases().stream().map(Phase::key).toList()),
                    "",
                    "",
                    "");
        for (DayOff off : house.off())
            csv.row(
                    "off",
                    off.who(),
                    "",
                    "",
                    off.from().toString(),
                    off.through().toString(),
                    off.why());
        return csv.text();
    }

    /** The words a phase goes by in the file, in the order of the work. */
    public static List<Phase> work() {
        return Arrays.stream(Phase.values())
                .filter(phase -> phase != Phase.TRAVEL)
                .toList();
    }
}
