package plumbleaf.web.house;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.schedule.DayOff;
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.engine.schedule.Machine;
import plumbleaf.jobfile.calendar.HouseDaysFile;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Table;

/**
 * Who and what the house works with, for its page.
 *
 * @param who everyone and everything that can have days off
 * @param works kinds of work that may take a machine
 * @param machines each with its name, how many, and for what
 * @param off days off, each in words, in the order of the file
 */
public record HouseTables(
        int crews,
        int coldCureDays,
        String rainPct,
        List<Choice> who,
        List<Choice> works,
        List<Table.Line> machines,
        List<String> off) {
    public HouseTables {
        who = List.copyOf(who);
        works = List.copyOf(works);
        machines = List.copyOf(machines);
        off = List.copyOf(off);
    }

    static HouseTables of(HouseDays house) {
        List<Choice> who = new ArrayList<>(List.of(new Choice(DayOff.EVERYONE, "everyone: a holiday")));
        for (int crew = 1; crew <= house.crews(); crew++) who.add(new Choice("crew " + crew, "crew " + crew));
        who.add(new Choice("shop", "the shop"));
        List<Table.Line> machines = new ArrayList<>();
        for (Machine machine : house.machines()) {
            who.add(new Choice(machine.name(), machine.count() == 1 ? machine.name() : "one " + machine.name()));
            machines.add(new Table.Line(
                    machine.name(),
                    List.of(
                            machine.name(),
                            Integer.toString(machine.count()),
                            String.join(
                                    ", ",
                                    machine.phases().stream().map(Phase::words).toList()))));
        }
        return new HouseTables(
                house.crews(),
                house.coldCureDays(),
                DecimalText.upTo(house.rain() * 100, 2),
                who,
                HouseDaysFile.work().stream()
                        .map(phase -> new Choice(phase.key(), phase.words()))
                        .toList(),
                machines,
                house.off().stream().map(HouseTables::words).toList());
    }

    static String words(DayOff off) {
        return off.who() + ", " + off.from() + (off.through().equals(off.from()) ? "" : " through " + off.through())
                + (off.why().isEmpty() ? "" : ", " + off.why());
    }
}
