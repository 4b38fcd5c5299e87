package plumbleaf.web.people;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Who may ask for what. Only an owner sees people, the audit log and the inside of the server,
 * and removes a job for good. Shop and crew may ask for what is listed
 * here and for nothing else, so a page that somebody adds later is closed to them until somebody opens it on purpose.
 */
public final class RoleRules {
    /** Matched against whole paths. */
    private static final List<Pattern> OWNERS_ONLY = patterns(
            "/people(/.*)?", "/audit", "/actuator(/.*)?", "/api/v1/audit", "/trash/empty", "/trash/[a-z0-9]+/remove");

    private static final List<Pattern> HANDS_READ = patterns(
            "/",
            "/me",
            "/calendar(\\.ics)?",
            "/guide(/.*)?",
            "/field-book/([a-z]+\\.[a-z]+)?",
            "/field-book/jobs/[a-z0-9]+",
            "/jobs/[a-z0-9]+",
            "/jobs/[a-z0-9]+/(ground|line|gates|strength|stock|papers)",
            "/jobs/[a-z0-9]+/papers/(files|pages)/[^/]+",
            "/jobs/[a-z0-9]+/stock/(order\\.csv|load\\.csv|receiving)",
            "/jobs/[a-z0-9]+/(history|file)",
            "/jobs/[a-z0-9]+/files(/[a-z0-9]+)?",
            "/api/v1/openapi.json",
            "/api/v1/jobs",
            "/api/v1/jobs/[a-z0-9]+",
            "/api/v1/jobs/[a-z0-9]+/(design|papers|shots)",
            "/api/v1/jobs/[a-z0-9]+/papers/[^/]+");

    private static final List<Pattern> HANDS_SEND = patterns(
            "/look",
            "/sign-out",
            "/me/(password|keys|keys/end)",
            "/jobs/[a-z0-9]+/files",
            "/jobs/[a-z0-9]+/stock/(write-down|receiving|receiving/undo)");

    private static final Set<String> READING = Set.of("GET", "HEAD");

    private RoleRules() {}

    /** The path as the rooms will understand it: decoded, so that no spelling of it slips past a rule. */
    static String path(HttpServletRequest request) {
        String rest = request.getPathInfo();
        return request.getServletPath() + (rest == null ? "" : rest);
    }

    /** @param path decoded, without the query */
    public static boolean may(Role role, String method, String path) {
        if (role == Role.OWNER) return true;
        if (matches(OWNERS_ONLY, path)) return false;
        if (role.edits()) return true;
        return matches(READING.contains(method) ? HANDS_READ : HANDS_SEND, path);
    }

    private static boolean matches(List<Pattern> patterns, String path) {
        return patterns.stream().anyMatch(pattern -> pattern.matcher(path).matches());
    }

    private static List<Pattern> patterns(String... texts) {
        return List.of(texts).stream().map(Pattern::compile).toList();
    }
}
