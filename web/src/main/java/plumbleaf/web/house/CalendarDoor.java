package plumbleaf.web.house;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.schedule.DayOff;
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.engine.schedule.Machine;
import plumbleaf.jobfile.calendar.CalendarFile;
import plumbleaf.jobfile.calendar.HouseDaysFile;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Frame;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;

/**
 * The days of all jobs side by side: no crew in two places, no machine on two jobs, no digging before its ticket; and who and what the house has to work with. Nothing
 * here is an amount of money.
 */
@Controller
class CalendarDoor {
    private static final int MOST_ERRORS = 60;
    private static final int MOST_LETTERS = 40;
    private static final int MOST_CREWS = 50;

    private final AllDesigns designs;
    private final HouseDaysStore store;
    private final Pages pages;
    private final WhoIsThere who;
    private final Clock clock;

    CalendarDoor(AllDesigns designs, HouseDaysStore store, Pages pages, WhoIsThere who, Clock clock) {
        this.designs = designs;
        this.store = store;
        this.pages = pages;
        this.who = who;
        this.clock = clock;
    }

    @GetMapping("/calendar")
    ResponseEntity<String> calendar(HttpServletRequest request, @RequestParam(defaultValue = "") String from) {
        return shown(request, HttpStatus.OK, day(from).orElse(today()), List.of());
    }

    @GetMapping("/calendar.ics")
    ResponseEntity<byte[]> file(HttpServletRequest request, @RequestParam(defaultValue = "") String from) {
        LocalDate first = day(from).orElse(today());
        LaidOut laid = laid(pages.frame(request, "Calendar"), first);
        String text = CalendarFile.of(
                laid.bookings(), laid.dates(), first, List.of("Call before you dig; check the locate ticket."));
        return download("days.ics", "text/calendar; charset=utf-8", text);
    }

    @GetMapping("/calendar/days.csv")
    ResponseEntity<byte[]> table() {
        return download("days.csv", "text/csv; charset=utf-8", store.file());
    }

    @PostMapping("/calendar/days")
    ResponseEntity<String> bring(HttpServletRequest request, @RequestParam MultipartFile file) throws IOException {
        List<InputError> errors = store.bring(new String(file.getBytes(), StandardCharsets.UTF_8), me(request));
        if (!errors.isEmpty())
            return refused(
                    request,
                    errors.stream().limit(MOST_ERRORS).map(InputError::text).toList());
        return back();
    }

    @PostMapping("/calendar/house")
    ResponseEntity<String> house(
            HttpServletRequest request,
            @RequestParam(defaultValue = "") String crews,
            @RequestParam(defaultValue = "") String cold,
            @RequestParam(defaultValue = "") String rain) {
        List<String> wrong = new ArrayList<>();
        int many = count(crews, 1, MOST_CREWS, "Crews", wrong);
        int days = count(cold, 0, 60, "Days of cure while it may freeze", wrong);
        double share = percent(rain, wrong);
        if (!wrong.isEmpty()) return refused(request, wrong);
        HouseDays now = store.house();
        for (DayOff off : now.off())
            if (!HouseDaysFile.works(off.who(), many, now.machines()))
                return refused(
                        request, List.of(off.who() + " has days off from " + off.from() + "; take them out first."));
        store.change(
                house -> new HouseDays(many, days, share / 100.0, house.machines(), house.off()),
                "crews and weather",
                me(request));
        return back();
    }

    @PostMapping("/calendar/off")
    ResponseEntity<String> off(
            HttpServletRequest request,
            @RequestParam String of,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String through,
            @RequestParam(defaultValue = "") String why) {
        HouseDays now = store.house();
        LocalDate first = day(from).orElse(LocalDate.EPOCH);
        LocalDate last = through.isEmpty() ? first : day(through).orElse(LocalDate.EPOCH);
        List<String> wrong = new ArrayList<>();
        if (!HouseDaysFile.works(of, now.crews(), now.machines()))
            wrong.add("Nobody and nothing here goes by " + of + ".");
        if (first.equals(LocalDate.EPOCH) || last.equals(LocalDate.EPOCH)) wrong.add("Say the first day that is off.");
        if (last.isBefore(first)) wrong.add("The last day off is before the first.");
        if (why.length() > MOST_LETTERS) wrong.add("Say why in " + MOST_LETTERS + " letters or fewer.");
        if (!wrong.isEmpty()) return refused(request, wrong);
        store.change(
                house -> {
                    List<DayOff> all = new ArrayList<>(house.off());
                    all.add(new DayOff(of, first, last, why.strip()));
                    return house.withOff(all);
                },
                "days off",
                me(request));
        return back();
    }

    /** @param which by its place; and what it is, so that nothing else goes when someone was quicker */
    @PostMapping("/calendar/off/out")
    ResponseEntity<String> offOut(HttpServletRequest request, @RequestParam int which, @RequestParam String is) {
        store.change(
                house -> {
                    List<DayOff> all = new ArrayList<>(house.off());
                    boolean same = which >= 0
                            && which < all.size()
                            && HouseTables.words(all.get(which)).equals(is);
                    if (same) all.remove(which);
                    return house.withOff(all);
                },
                "days off taken out",
                me(request));
        return back();
    }

    @PostMapping("/calendar/machine")
    ResponseEntity<String> machine(
            HttpServletRequest request,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String count,
            @RequestParam(name = "for", required = false) List<String> works) {
        List<String> wrong = new ArrayList<>();
        int many = count(count, 1, MOST_CREWS, "How many there are", wrong);
        List<Phase> phases = new ArrayList<>();
        for (String word : works == null ? List.<String>of() : works)
            Phase.of(word).ifPresent(phases::add);
        String is = name.strip();
        if (is.isEmpty() || is.length() > MOST_LETTERS || HouseDaysFile.works(is, MOST_CREWS, List.of()))
            wrong.add("A machine has a name of its own, such as mini digger.");
        if (phases.isEmpty()) wrong.add("Tick the work that takes the machine.");
        if (!wrong.isEmpty()) return refused(request, wrong);
        store.change(
                house -> {
                    List<Machine> all = new ArrayList<>(house.machines());
                    all.removeIf(each -> each.name().equals(is));
                    all.add(new Machine(is, many, phases));
                    return house.withMachines(all);
                },
                "machine",
                me(request));
        return back();
    }

    @PostMapping("/calendar/machine/out")
    ResponseEntity<String> machineOut(HttpServletRequest request, @RequestParam String name) {
        store.change(
                house -> {
                    List<Machine> all = new ArrayList<>(house.machines());
                    all.removeIf(each -> each.name().equals(name));
                    List<DayOff> off = new ArrayList<>(house.off());
                    off.removeIf(each -> each.who().equals(name));
                    return house.withMachines(all).withOff(off);
                },
                "machine taken out",
                me(request));
        return back();
    }

    private static int count(String text, int least, int most, String what, List<String> wrong) {
        boolean whole = text.strip().matches("\\d{1,3}");
        int count = whole ? Integer.parseInt(text.strip()) : -1;
        if (count >= least && count <= most) return count;
        wrong.add(what + ": write a whole number from " + least + " to " + most + ".");
        return least;
    }

    private static double percent(String text, List<String> wrong) {
        String typed = text.strip();
        if (typed.matches("\\d{1,3}(\\.\\d{1,2})?") && Double.parseDouble(typed) <= 100)
            return Double.parseDouble(typed);
        wrong.add("Days kept for rain, in per cent: write a number from 0 to 100, such as 12.5.");
        return 0;
    }

    private LaidOut laid(Frame frame, LocalDate first) {
        return LaidOut.of(
                designs.latest().stream().map(AllDesigns.Of::design).toList(), store.house(), first, frame.seesMoney());
    }

    private ResponseEntity<String> refused(HttpServletRequest request, List<String> errors) {
        return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, today(), errors);
    }

    private ResponseEntity<String> shown(
            HttpServletRequest request, HttpStatus status, LocalDate first, List<String> errors) {
        Frame frame = pages.frame(request, "Calendar");
        LaidOut laid = laid(frame, first);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("frame", frame);
        model.put("from", first.toString());
        model.put("errors", errors);
        model.put("house", HouseTables.of(laid.house()));
        model.put("days", laid.days());
        model.put(
                "wide",
                DaysPicture.wide(laid.bookings(), laid.house(), laid.frosty()).stream()
                        .map(SvgPlot::inPage)
                        .toList());
        model.put(
                "narrow",
                DaysPicture.narrow(laid.bookings(), laid.house(), laid.frosty()).stream()
                        .map(SvgPlot::inPage)
                        .toList());
        return pages.html(status, "calendar.jte", model);
    }

    private static ResponseEntity<byte[]> download(String name, String type, String text) {
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, type)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    private String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    private static ResponseEntity<String> back() {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/calendar"))
                .build();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
    }
}
