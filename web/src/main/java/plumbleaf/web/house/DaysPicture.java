package plumbleaf.web.house;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.schedule.Booking;
import plumbleaf.engine.schedule.DayOff;
import plumbleaf.engine.schedule.HouseDays;

/**
 * The days as bars, some weeks in one strip: a lane for each job, then one for each crew, the shop and each machine, so that a clash could be seen and an idle day is.
 * Work is hatched by what it is; what is waited through, or kept for rain, is an empty bar with a dashed edge. Days off are shaded.
 */
final class DaysPicture {
    private static final double LANE_IN = 0.3;
    private static final double BAR_IN = 0.2;
    private static final double NAME_IN = 0.2;
    private static final double HEAD_IN = 0.62;
    private static final double INSET_IN = 0.02;

    private final List<Booking> bookings;
    private final HouseDays house;
    private final double wideIn;
    private final double namesIn;
    private final int days;
    private final Set<LocalDate> frosty;

    private DaysPicture(
            List<Booking> bookings, HouseDays house, double wideIn, double namesIn, int days, Set<LocalDate> frosty) {
        this.bookings = bookings;
        this.house = house;
        this.wideIn = wideIn;
        this.namesIn = namesIn;
        this.days = days;
        this.frosty = frosty;
    }

    /**
     * For a screen: three weeks a strip, names to the left.
     *
     * @param frosty days on which some job of these fears frost
     */
    static List<Drawing> wide(List<Booking> bookings, HouseDays house, Set<LocalDate> frosty) {
        return new DaysPicture(bookings, house, 9.6, 1.5, 21, frosty).strips();
    }

    /** For a phone: a fortnight a strip, names above. */
    static List<Drawing> narrow(List<Booking> bookings, HouseDays house, Set<LocalDate> frosty) {
        return new DaysPicture(bookings, house, 3.7, 0, 14, frosty).strips();
    }

    /** One line of the picture: its bars do not overlap. */
    private record Lane(String name, boolean first, List<Booking> bars, boolean byJob) {}

    private List<Drawing> strips() {
        List<Drawing> strips = new ArrayList<>();
        if (bookings.isEmpty()) return strips;
        LocalDate from = bookings.stream()
                .map(Booking::first)
                .min(LocalDate::compareTo)
                .orElseThrow()
                .with(DayOfWeek.MONDAY);
        LocalDate last =
                bookings.stream().map(Booking::last).max(LocalDate::compareTo).orElseThrow();
        for (LocalDate start = from; !start.isAfter(last); start = start.plusDays(days)) {
            LocalDate end = start.plusDays(days - 1L);
            LocalDate begin = start;
            List<Booking> here = bookings.stream()
                    .filter(each ->
                            !each.last().isBefore(begin) && !each.first().isAfter(end))
                    .toList();
            if (!here.isEmpty()) strips.add(strip(start, here));
        }
        return strips;
    }

    private Drawing strip(LocalDate start, List<Booking> here) {
        List<Lane> lanes = lanes(here);
        List<Mark> marks = new ArrayList<>();
        double y = -HEAD_IN;
        double bottom = y;
        for (Lane lane : lanes) bottom -= LANE_IN + (namesIn == 0 && lane.first() ? NAME_IN : 0) + gap(lane);
        head(start, bottom, marks);
        for (Lane lane : lanes) {
            y -= gap(lane);
            if (gap(lane) > 0)
                marks.add(Stroke.line(
                        new Point(0, y + gap(lane) / 2),
                        new Point(wideIn, y + gap(lane) / 2),
                        Look.thin(Layer.CHART).in(Ink.SECOND)));
            if (namesIn == 0 && lane.first()) y -= NAME_IN;
            double middle = y - LANE_IN / 2;
            if (lane.first()) name(lane, middle, marks);
            away(lane, start, middle, marks);
            for (Booking booking : lane.bars()) bar(lane, booking, start, middle, marks);
            y -= LANE_IN;
        }
        key(here, y - 0.24, marks);
        return Drawing.of("Days from " + start + " to " + start.plusDays(days - 1L), Scale.FULL, marks);
    }

    /** What the hatches mean, of those that are there. */
    private void key(List<Booking> here, double top, List<Mark> marks) {
        Map<String, Booking> kinds = new LinkedHashMap<>();
        for (Booking booking : here) kinds.putIfAbsent(booking.isWait() ? "wait" : booking.key(), booking);
        double x = namesIn;
        double y = top;
        for (Booking kind : kinds.values()) {
            String words = kind.isWait() ? "waits, or kept for rain" : kind.name();
            double room = 0.34 + Lettering.width(words, Text.SMALL, Text.Weight.REGULAR) + 0.2;
            if (x > namesIn && x + room > wideIn) {
                x = namesIn;
                y -= 0.24;
            }
            Look edge = Look.thin(Layer.CHART).in(Ink.INK);
            marks.add(Area.edged(
                    new Box(x, y - 0.07, x + 0.26, y + 0.07).corners(),
                    material(kind),
                    kind.isWait() ? edge.as(LineKind.HIDDEN) : edge));
            marks.add(Text.small(new Point(x + 0.34, y), words)
                    .anchored(Text.Across.START, Text.Up.MIDDLE)
                    .with(Look.note().in(Ink.SECOND)));
            x += room;
        }
    }

    /** Room above the lanes of crews and machines. */
    private static double gap(Lane lane) {
        return lane.name().equals("crew 1") ? 0.16 : 0;
    }

    private List<Lane> lanes(List<Booking> here) {
        List<Lane> lanes = new ArrayList<>();
        Set<String> jobs = new LinkedHashSet<>();
        for (Booking booking : bookings) if (here.contains(booking)) jobs.add(booking.job());
        for (String job : jobs) {
            List<Booking> site = new ArrayList<>();
            List<Booking> shop = new ArrayList<>();
            for (Booking booking : here)
                if (booking.job().equals(job)) (booking.who().equals("shop") ? shop : site).add(booking);
            if (!site.isEmpty()) lanes.add(new Lane(job, true, site, false));
            if (!shop.isEmpty()) lanes.add(new Lane(job, site.isEmpty(), shop, false));
        }
        Map<String, List<Booking>> held = new LinkedHashMap<>();
        for (int crew = 1; crew <= house.crews(); crew++) held.put("crew " + crew, new ArrayList<>());
        held.put("shop", new ArrayList<>());
        for (var machine : house.machines()) held.put(machine.name(), new ArrayList<>());
        for (Booking booking : here) {
            if (booking.isWait()) continue;
            held.computeIfAbsent(booking.who(), none -> new ArrayList<>()).add(booking);
            for (String machine : booking.machines())
                held.computeIfAbsent(machine, none -> new ArrayList<>()).add(booking);
        }
        held.forEach((who, bars) -> {
            if (!bars.isEmpty() || who.startsWith("crew ")) lanes.addAll(apart(who, bars));
        });
        return lanes;
    }

    /** More of a machine than one: lanes of its own for those at work at once. */
    private static List<Lane> apart(String who, List<Booking> bars) {
        List<List<Booking>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        for (Booking bar : bars) {
            List<Booking> row = rows.stream()
                    .filter(each -> each.stream().noneMatch(other -> meets(other, bar)))
                    .findFirst()
                    .orElseGet(() -> {
                        rows.add(new ArrayList<>());
                        return rows.get(rows.size() - 1);
                    });
            row.add(bar);
        }
        List<Lane> lanes = new ArrayList<>();
        for (List<Booking> row : rows) lanes.add(new Lane(who, lanes.isEmpty(), row, true));
        return lanes;
    }

    private static boolean meets(Booking one, Booking other) {
        return at(one) < end(other) && at(other) < end(one);
    }

    private static double at(Booking booking) {
        return booking.first().toEpochDay() + (booking.afternoon() ? 0.5 : 0);
    }

    private static double end(Booking booking) {
        return booking.last().toEpochDay() + (booking.untilNoon() ? 0.5 : 1);
    }

    private double perDay() {
        return (wideIn - namesIn) / days;
    }

    private double x(double epochDay, LocalDate start) {
        double from = Math.max(0, Math.min(days, epochDay - start.toEpochDay()));
        return namesIn + from * perDay();
    }

    /** Months, days and weekdays; weekends and days off for all shaded down the whole strip, frost marked. */
    private void head(LocalDate start, double bottom, List<Mark> marks) {
        for (int i = 0; i < days; i++) {
            LocalDate day = start.plusDays(i);
            double left = x((double) day.toEpochDay(), start);
            double right = left + perDay();
            boolean weekend = day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) >= 0;
            if (weekend || isOff(DayOff.EVERYONE, day))
                marks.add(Area.plain(
                        new Box(left, bottom, right, -HEAD_IN).corners(),
                        Material.SHADE,
                        Look.thin(Layer.CHART).in(Ink.HAIR)));
            marks.add(Stroke.line(
                    new Point(left, bottom),
                    new Point(left, -HEAD_IN),
                    Look.thin(Layer.CHART).in(Ink.HAIR)));
            double middle = (left + right) / 2;
            String number = Integer.toString(day.getDayOfMonth());
            marks.add(Text.small(new Point(middle, -0.3), number).anchored(Text.Across.MIDDLE, Text.Up.MIDDLE));
            String letter = word(day.getDayOfWeek().toString()).substring(0, namesIn == 0 ? 1 : 2);
            marks.add(Text.small(new Point(middle, -0.49), letter)
                    .anchored(Text.Across.MIDDLE, Text.Up.MIDDLE)
                    .with(Look.note().in(Ink.SECOND)));
            boolean nextMonthSoon = day.getDayOfMonth() > 1 && day.plusDays(6).getMonth() != day.getMonth();
            if ((i == 0 && !nextMonthSoon) || day.getDayOfMonth() == 1)
                marks.add(Text.small(
                                new Point(left + 0.03, -0.1),
                                word(day.getMonth().toString())
                                        + (i < 7 ? " " + day.getYear() : "")
                                        + (frosty.contains(day) ? ", frost may come" : ""))
                        .anchored(Text.Across.START, Text.Up.MIDDLE)
                        .bold());
        }
        marks.add(Stroke.line(
                new Point(wideIn, bottom),
                new Point(wideIn, -HEAD_IN),
                Look.thin(Layer.CHART).in(Ink.HAIR)));
        marks.add(Stroke.line(
                new Point(namesIn, -HEAD_IN),
                new Point(wideIn, -HEAD_IN),
                Look.thin(Layer.CHART).in(Ink.SECOND)));
    }

    private void name(Lane lane, double middle, List<Mark> marks) {
        double room = namesIn == 0 ? wideIn : namesIn - 0.1;
        String name = lane.name();
        Text text = namesIn == 0
                ? Text.small(new Point(0.03, middle + LANE_IN / 2 + NAME_IN / 2 - 0.02), fitting(name, room))
                        .anchored(Text.Across.START, Text.Up.MIDDLE)
                : Text.small(new Point(namesIn - 0.08, middle), fitting(name, room))
                        .anchored(Text.Across.END, Text.Up.MIDDLE);
        marks.add(lane.byJob() ? text : text.bold());
    }

    /** Days off of a crew, the shop or a machine, on its own lane. */
    private void away(Lane lane, LocalDate start, double middle, List<Mark> marks) {
        if (!lane.byJob()) return;
        for (int i = 0; i < days; i++) {
            LocalDate day = start.plusDays(i);
            if (!isOff(lane.name(), day)) continue;
            double left = x((double) day.toEpochDay(), start);
            marks.add(Area.plain(
                    new Box(left, middle - LANE_IN / 2, left + perDay(), middle + LANE_IN / 2).corners(),
                    Material.SOIL,
                    Look.thin(Layer.CHART).in(Ink.HAIR)));
        }
    }

    private boolean isOff(String who, LocalDate day) {
        return house.off().stream()
                .anyMatch(each -> each.who().equals(who) && !day.isBefore(each.from()) && !day.isAfter(each.through()));
    }

    private void bar(Lane lane, Booking booking, LocalDate start, double middle, List<Mark> marks) {
        double left = x(at(booking), start) + INSET_IN;
        double right = x(end(booking), start) - INSET_IN;
        if (right <= left) return;
        Look edge = Look.thin(Layer.CHART)
                .in(booking.notes().isEmpty() || booking.key().equals("rain") ? Ink.INK : Ink.CAUTION);
        marks.add(Area.edged(
                new Box(left, middle - BAR_IN / 2, right, middle + BAR_IN / 2).corners(),
                material(booking),
                booking.isWait() ? edge.as(LineKind.HIDDEN) : edge));
        String words = words(lane, booking, right - left - 0.06);
        if (!words.isEmpty())
            marks.add(Text.small(new Point((left + right) / 2, middle), words)
                    .anchored(Text.Across.MIDDLE, Text.Up.MIDDLE)
                    .clearing());
    }

    /** The longest of the words that fit the bar. */
    private static String words(Lane lane, Booking booking, double room) {
        String crew = booking.who().startsWith("crew ") ? " " + booking.who().substring(5) : "";
        List<String> choices = lane.byJob()
                ? List.of(booking.job(), booking.job().split(" ", 2)[0], initials(booking.job()))
                : List.of(
                        booking.name() + (crew.isEmpty() ? "" : ", crew" + crew),
                        booking.name(),
                        shortly(booking) + crew,
                        shortly(booking));
        for (String choice : choices)
            if (Lettering.width(choice, Text.SMALL, Text.Weight.REGULAR) <= room) return choice;
        return "";
    }

    private static String initials(String job) {
        StringBuilder initials = new StringBuilder();
        for (String word : job.split("\\s+", -1)) if (!word.isEmpty()) initials.appendCodePoint(word.codePointAt(0));
        return initials.toString();
    }

    private static String shortly(Booking booking) {
        return switch (booking.key()) {
            case "tear-out" -> "out";
            case "finish" -> "stain";
            default -> booking.key();
        };
    }

    private static String fitting(String name, double room) {
        String text = name;
        while (text.length() > 1 && Lettering.width(text, Text.SMALL, Text.Weight.SEMIBOLD) > room)
            text = text.substring(0, text.length() - 2) + "…";
        return text;
    }

    private static Material material(Booking booking) {
        return switch (booking.key()) {
            case "tear-out" -> Material.GRAVEL;
            case "shop" -> Material.STEEL_FACE;
            case "set" -> Material.CONCRETE;
            case "build" -> Material.WOOD;
            case "finish" -> Material.END_GRAIN;
            case "hang" -> Material.GATE_FACE;
            default -> Material.CLEAR;
        };
    }

    private static String word(String shouted) {
        return shouted.charAt(0) + shouted.substring(1).toLowerCase(Locale.ROOT);
    }
}
