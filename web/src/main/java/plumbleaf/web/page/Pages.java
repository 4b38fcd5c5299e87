package plumbleaf.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;
import plumbleaf.web.people.Mode;
import plumbleaf.web.people.Person;
import plumbleaf.web.people.WhoIsThere;

/** Prints pages from the templates that the build has compiled. A page is whole before its first byte is sent. */
@Component
public class Pages {
    static final String LOOK_COOKIE = "look";

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final WhoIsThere who;

    public Pages(WhoIsThere who) {
        this.who = who;
    }

    /** The frame for one request. */
    public Frame frame(HttpServletRequest request, String title) {
        CsrfToken token = (CsrfToken) request.getAttribute(CsrfToken.class.getName());
        boolean signedIn = who.mode() == Mode.LOCAL || request.getUserPrincipal() != null;
        Optional<Person> person = signedIn ? Optional.of(who.person(request.getUserPrincipal())) : Optional.empty();
        return new Frame(
                title,
                token == null ? "" : token.getToken(),
                person.map(Person::name).orElse(""),
                person.map(Person::role),
                who.mode() == Mode.LOCAL,
                look(request));
    }

    public ResponseEntity<String> html(HttpStatusCode status, String template, Map<String, Object> values) {
        StringOutput out = new StringOutput();
        templates.render(template, values, out);
        return ResponseEntity.status(status)
                .contentType(MediaType.parseMediaType("text/html;charset=UTF-8"))
                .cacheControl(CacheControl.noStore())
                .body(out.toString());
    }

    private static String look(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        if (cookies == null) return "";
        for (Cookie cookie : cookies) {
            boolean known =
                    cookie.getValue().equals("light") || cookie.getValue().equals("dark");
            if (cookie.getName().equals(LOOK_COOKIE) && known) return cookie.getValue();
        }
        return "";
    }
}
