package plumbleaf.web.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Reads {@code Authorization: Bearer ...}. In local mode no key is needed, but what changes something must say that it sends JSON: a page
 * elsewhere cannot say so without asking first, and nobody answers it.
 */
final class KeyOfAProgram extends OncePerRequestFilter {
    private static final String BEARER = "Bearer ";
    private static final Set<String> READING = Set.of("GET", "HEAD");

    private final ApiTokens tokens;
    private final Mode mode;

    KeyOfAProgram(ApiTokens tokens, Mode mode) {
        this.tokens = tokens;
        this.mode = mode;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse answer, FilterChain next)
            throws ServletException, IOException {
        if (mode == Mode.LOCAL && !READING.contains(request.getMethod()) && !sendsJson(request)) {
            problem(answer, 415, "say Content-Type: application/json");
            return;
        }
        String header = request.getHeader("Authorization");
        Optional<Person> person = mode == Mode.SERVED && header != null && header.startsWith(BEARER)
                ? tokens.person(new Secret(header.substring(BEARER.length()).strip()))
                : Optional.empty();
        person.ifPresent(KeyOfAProgram::come);
        next.doFilter(request, answer);
    }

    private static boolean sendsJson(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("application/json");
    }

    private static void come(Person person) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                person.signIn(),
                null,
                List.of(new SimpleGrantedAuthority("ROLE_" + person.role().name()))));
        SecurityContextHolder.setContext(context);
    }

    static void noKey(HttpServletRequest request, HttpServletResponse answer, AuthenticationException missing)
            throws IOException {
        answer.setHeader("WWW-Authenticate", "Bearer");
        problem(answer, 401, "send Authorization: Bearer with a key that is yours");
    }

    static void notAllowed(HttpServletResponse answer) throws IOException {
        problem(answer, 403, "this is not for the role of this key");
    }

    private static void problem(HttpServletResponse answer, int status, String words) throws IOException {
        answer.setStatus(status);
        answer.setContentType("application/json;charset=UTF-8");
        answer.getWriter().print("{\"errors\":[{\"problem\":\"" + words + "\"}]}\n");
    }
}
