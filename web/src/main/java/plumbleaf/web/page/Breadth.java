package plumbleaf.web.page;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;

/**
 * How much room a screen has for a drawing. A narrow one gets drawings of its own, with letters as large as elsewhere and less beside each
 * other, instead of a wide one made small. The page's script says what it measured in a cookie; before it has, the browser's own word counts.
 */
public enum Breadth {
    WIDE,
    NARROW;

    private static final String COOKIE = "breadth";

    public static Breadth of(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        if (cookies != null)
            for (Cookie cookie : cookies)
                if (cookie.getName().equals(COOKIE)) return cookie.getValue().equals(NARROW.key()) ? NARROW : WIDE;
        String hint = request.getHeader("Sec-CH-UA-Mobile");
        if (hint != null) return hint.equals("?1") ? NARROW : WIDE;
        String agent = request.getHeader("User-Agent");
        return agent != null && agent.contains("Mobi") ? NARROW : WIDE;
    }

    public String key() {
        return this == WIDE ? "wide" : "narrow";
    }
}
