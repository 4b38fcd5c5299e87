package plumbleaf.web.door;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import plumbleaf.web.page.Moment;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;
import plumbleaf.web.people.Audit;
import plumbleaf.web.people.Invitations;
import plumbleaf.web.people.Mode;
import plumbleaf.web.people.People;
import plumbleaf.web.people.Person;
import plumbleaf.web.people.PersonLine;
import plumbleaf.web.people.Role;
import plumbleaf.web.people.Secret;
import plumbleaf.web.people.WhoIsThere;

/** Where an owner adds people, gives them roles and links to set a password, shuts them out, and reads who did what. */
@Controller
class PeopleDoor {
    private static final int LINES = 500;
    private static final int LONGEST = 60;

    private final Pages pages;
    private final People people;
    private final Invitations invitations;
    private final Audit audit;
    private final WhoIsThere who;

    PeopleDoor(Pages pages, People people, Invitations invitations, Audit audit, WhoIsThere who) {
        this.pages = pages;
        this.people = people;
        this.invitations = invitations;
        this.audit = audit;
        this.who = who;
    }

    @GetMapping("/people")
    ResponseEntity<String> list(HttpServletRequest request) {
        if (who.mode() == Mode.LOCAL) return back("/");
        return shown(request, HttpStatus.OK, Map.of());
    }

    @PostMapping("/people")
    ResponseEntity<String> add(
            HttpServletRequest request,
            @RequestParam String name,
            @RequestParam String signIn,
            @RequestParam String role) {
        String problem = name.isBlank() || name.length() > LONGEST
                ? "Say what others call them, in at most " + LONGEST + " letters."
                : !signIn.strip().matches("[A-Za-z0-9._@-]{1," + LONGEST + "}")
                        ? "A name to sign in with has letters, digits, dots, hyphens and @ only."
                        : people.isTaken(signIn) ? "Somebody signs in with this name already." : "";
        if (!problem.isEmpty())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    Map.of("problem", problem, "name", name, "signIn", signIn));
        String id = people.add(signIn, name, role(role), me(request).name());
        return link(request, id);
    }

    @PostMapping("/people/{id}/role")
    ResponseEntity<String> role(HttpServletRequest request, @PathVariable String id, @RequestParam String role) {
        return changed(
                request, people.setRole(known(id).id(), role(role), me(request).name()));
    }

    @PostMapping("/people/{id}/shut-out")
    ResponseEntity<String> shutOut(HttpServletRequest request, @PathVariable String id) {
        return changed(
                request, people.setClosed(known(id).id(), true, me(request).name()));
    }

    @PostMapping("/people/{id}/let-in")
    ResponseEntity<String> letIn(HttpServletRequest request, @PathVariable String id) {
        return changed(
                request, people.setClosed(known(id).id(), false, me(request).name()));
    }

    /** For good: their name is nowhere any more. */
    @PostMapping("/people/{id}/take-out")
    ResponseEntity<String> takeOut(
            HttpServletRequest request, @PathVariable String id, @RequestParam(defaultValue = "") String sure) {
        boolean done =
                sure.equals("yes") && people.takeOut(known(id).id(), me(request).name());
        if (done) return back("/people");
        return shown(
                request,
                HttpStatus.UNPROCESSABLE_CONTENT,
                Map.of("problem", "Shut them out first, then tick that you are sure."));
    }

    /** The link itself is in this one answer and nowhere else. */
    @PostMapping("/people/{id}/link")
    ResponseEntity<String> link(HttpServletRequest request, @PathVariable String id) {
        Person them = known(id);
        Secret secret = invitations.invite(them, me(request).name());
        String address = ServletUriComponentsBuilder.fromRequestUri(request)
                .replacePath("/welcome/" + secret.text())
                .replaceQuery(null)
                .toUriString();
        return shown(request, HttpStatus.OK, Map.of("made", address, "madeFor", them.name()));
    }

    @GetMapping("/audit")
    ResponseEntity<String> audit(HttpServletRequest request) {
        Map<String, String> names = namesBySignIn();
        List<Table.Line> lines = audit.latest(LINES).stream()
                .map(line -> new Table.Line(
                        "",
                        List.of(
                                names.getOrDefault(line.who(), line.who()),
                                line.what(),
                                names.getOrDefault(line.about(), line.about()),
                                Moment.of(line.at()))))
                .toList();
        Table table = new Table("Latest first", List.of("Who", "What", "About", "When"), lines);
        return pages.html(
                HttpStatus.OK, "audit.jte", Map.of("frame", pages.frame(request, "Who did what"), "lines", table));
    }

    /** People are told by their name, whether a line was written at the door or at their work. */
    private Map<String, String> namesBySignIn() {
        Map<String, String> names = new LinkedHashMap<>();
        for (PersonLine line : people.all())
            names.put(line.person().signIn(), line.person().name());
        return names;
    }

    private ResponseEntity<String> changed(HttpServletRequest request, boolean done) {
        if (done) return back("/people");
        return shown(
                request,
                HttpStatus.UNPROCESSABLE_CONTENT,
                Map.of("problem", "There must stay an owner who can sign in. Make another first."));
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, Map<String, String> said) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("frame", pages.frame(request, "People"));
        values.put("people", people.all());
        for (String key : List.of("problem", "name", "signIn", "made", "madeFor"))
            values.put(key, said.getOrDefault(key, ""));
        return pages.html(status, "people.jte", values);
    }

    private Person known(String id) {
        return people.line(id)
                .map(PersonLine::person)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private static Role role(String key) {
        for (Role role : Role.values()) if (role.key().equals(key)) return role;
        throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
    }

    private Person me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal());
    }

    private static ResponseEntity<String> back(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(address))
                .build();
    }
}
