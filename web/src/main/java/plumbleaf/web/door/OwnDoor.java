package plumbleaf.web.door;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
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
import plumbleaf.web.page.Moment;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;
import plumbleaf.web.people.ApiTokens;
import plumbleaf.web.people.Invitations;
import plumbleaf.web.people.Mode;
import plumbleaf.web.people.Passwords;
import plumbleaf.web.people.People;
import plumbleaf.web.people.Person;
import plumbleaf.web.people.Secret;
import plumbleaf.web.people.WhoIsThere;

/** One's own password and keys; and the page where somebody new, or who forgot, sets a password. */
@Controller
class OwnDoor {
    private static final int LONGEST_LABEL = 60;

    private final Pages pages;
    private final People people;
    private final Invitations invitations;
    private final ApiTokens keys;
    private final WhoIsThere who;

    OwnDoor(Pages pages, People people, Invitations invitations, ApiTokens keys, WhoIsThere who) {
        this.pages = pages;
        this.people = people;
        this.invitations = invitations;
        this.keys = keys;
        this.who = who;
    }

    @GetMapping("/me")
    ResponseEntity<String> me(HttpServletRequest request) {
        if (who.mode() == Mode.LOCAL) return to("/");
        return shown(request, HttpStatus.OK, "", "");
    }

    /** Signs out everywhere, this page too. */
    @PostMapping("/me/password")
    ResponseEntity<String> password(
            HttpServletRequest request, @RequestParam String present, @RequestParam String password) {
        Person me = who.person(request.getUserPrincipal());
        String complaint = Passwords.complaint(password, me.signIn()).orElse("");
        if (!complaint.isEmpty()) return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, complaint, "");
        if (!people.changePassword(me, present, password))
            return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, "That is not your present password.", "");
        return to("/sign-in");
    }

    /** The key itself is in this one answer and nowhere else. */
    @PostMapping("/me/keys")
    ResponseEntity<String> key(HttpServletRequest request, @RequestParam String label) {
        if (label.isBlank() || label.length() > LONGEST_LABEL)
            return shown(request, HttpStatus.UNPROCESSABLE_CONTENT, "Say what the key is for, in a few words.", "");
        Secret key = keys.make(who.person(request.getUserPrincipal()), label);
        return shown(request, HttpStatus.OK, "", key.text());
    }

    @PostMapping("/me/keys/end")
    ResponseEntity<String> end(HttpServletRequest request, @RequestParam String id) {
        keys.revoke(who.person(request.getUserPrincipal()), id);
        return to("/me");
    }

    @GetMapping("/welcome/{secret}")
    ResponseEntity<String> welcome(HttpServletRequest request, @PathVariable String secret) {
        return welcome(request, HttpStatus.OK, secret, "");
    }

    @PostMapping("/welcome/{secret}")
    ResponseEntity<String> setPassword(
            HttpServletRequest request, @PathVariable String secret, @RequestParam String password) {
        Person them = invited(secret);
        String complaint = Passwords.complaint(password, them.signIn()).orElse("");
        if (!complaint.isEmpty()) return welcome(request, HttpStatus.UNPROCESSABLE_CONTENT, secret, complaint);
        if (!invitations.setPassword(new Secret(secret), password))
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return to("/sign-in");
    }

    private ResponseEntity<String> welcome(
            HttpServletRequest request, HttpStatus status, String secret, String problem) {
        Person them = invited(secret);
        return pages.html(
                status,
                "welcome.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Set your password"),
                        "at",
                        "/welcome/" + secret,
                        "name",
                        them.name(),
                        "signIn",
                        them.signIn(),
                        "problem",
                        problem));
    }

    private Person invited(String secret) {
        return invitations
                .invited(new Secret(secret))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, String problem, String made) {
        Person me = who.person(request.getUserPrincipal());
        List<Table.Line> lines = keys.of(me).stream()
                .map(key -> new Table.Line(key.id(), List.of(key.label(), Moment.of(key.madeAt()))))
                .toList();
        return pages.html(
                status,
                "me.jte",
                Map.of(
                        "frame",
                        pages.frame(request, me.name()),
                        "role",
                        me.role().word(),
                        "signIn",
                        me.signIn(),
                        "keys",
                        lines,
                        "problem",
                        problem,
                        "made",
                        made));
    }

    private static ResponseEntity<String> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(address))
                .build();
    }
}
