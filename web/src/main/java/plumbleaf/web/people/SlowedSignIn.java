package plumbleaf.web.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Turns away who guessed too often, before any password is looked at. */
final class SlowedSignIn extends OncePerRequestFilter {
    static final String NAME = "signIn";

    private final SignInThrottle throttle;

    SlowedSignIn(SignInThrottle throttle) {
        this.throttle = throttle;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse answer, FilterChain next)
            throws ServletException, IOException {
        boolean signingIn =
                request.getMethod().equals("POST") && RoleRules.path(request).equals("/sign-in");
        String name = signingIn ? request.getParameter(NAME) : null;
        if (signingIn && throttle.isTooOften(name == null ? "" : name, request.getRemoteAddr())) {
            answer.sendRedirect("/sign-in?later");
            return;
        }
        next.doFilter(request, answer);
    }
}
