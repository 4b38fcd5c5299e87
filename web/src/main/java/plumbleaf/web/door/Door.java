package plumbleaf.web.door;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.Mode;
import plumbleaf.web.people.Passwords;
import plumbleaf.web.people.People;
import plumbleaf.web.people.SetupCode;
import plumbleaf.web.people.WhoIsThere;

/** The pages before the first room: sign in, or make the first owner where there is nobody yet. */
@Controller
class Door {
    private final Pages pages;
    private final People people;
    private final SetupCode setupCode;
    private final WhoIsThere who;

    Door(Pages pages, People people, SetupCode setupCode, WhoIsThere who) {
        this.pages = pages;
        this.people = people;
        this.setupCode = setupCode;
        this.who = who;
    }

    @GetMapping("/sign-in")
    ResponseEntity<String> signIn(HttpServletRequest request) {
        if (who.mode() == Mode.LOCAL) return to("/");
        if (people.nobodyYet()) return to("/first-owner");
        String problem = request.getParameter("later") != null
                ? "That was too often. Wait a quarter of an hour, or ask an owner for a link to set your password."
                : request.getParameter("again") != null ? "That name and password do not go together." : "";
        return pages.html(
                HttpStatus.OK, "signIn.jte", Map.of("frame", pages.frame(request, "Sign in"), "problem", problem));
    }

    @GetMapping("/first-owner")
    ResponseEntity<String> firstOwner(HttpServletRequest request) {
        if (who.mode() == Mode.LOCAL || !people.nobodyYet()) return to("/sign-in");
        return form(request, HttpStatus.OK, FirstOwnerForm.EMPTY);
    }

    @PostMapping("/first-owner")
    ResponseEntity<String> makeFirstOwner(
            HttpServletRequest request,
            @RequestParam String code,
            @RequestParam String name,
            @RequestParam String signIn,
            @RequestParam String password) {
        if (who.mode() == Mode.LOCAL || !people.nobodyYet()) return to("/sign-in");
        FirstOwnerForm typed = new FirstOwnerForm(
                code,
                setupCode.is(code) ? "" : "This is not the code. It is printed where the server was started.",
                name,
                name.isBlank() ? "Say what others call you." : "",
                signIn,
                signIn.isBlank() ? "Choose a name to sign in with." : "",
                Passwords.complaint(password, signIn).orElse(""));
        if (typed.refused()) return form(request, HttpStatus.UNPROCESSABLE_CONTENT, typed);
        people.makeFirstOwner(signIn, name, password);
        return to("/sign-in");
    }

    private ResponseEntity<String> form(HttpServletRequest request, HttpStatus status, FirstOwnerForm typed) {
        return pages.html(
                status, "firstOwner.jte", Map.of("frame", pages.frame(request, "The first owner"), "typed", typed));
    }

    private static ResponseEntity<String> to(String address) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(address))
                .build();
    }
}
