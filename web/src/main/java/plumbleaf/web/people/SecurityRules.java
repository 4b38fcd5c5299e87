package plumbleaf.web.people;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.CookieRequestCache;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;

/** The doors: who may ask for what, and the headers that keep a page to itself. Forms carry a token; scripts come from files only. */
@Configuration(proxyBeanMethods = false)
class SecurityRules {
    private static final String CONTENT_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self';"
                    + " img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final String FEATURE_POLICY = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";

    /** What anybody may ask for. A customer's link and an invitation carry their own secret. */
    private static final String[] OPEN = {
        "/assets/**",
        "/drawing.css",
        "/sign-in",
        "/first-owner",
        "/welcome/*",
        "/c/**",
        "/look",
        "/error",
        "/actuator/health/liveness",
        "/actuator/health/readiness"
    };

    private static final int BCRYPT_ROUNDS = 12;

    @Bean
    Mode mode(@Value("${plumbleaf.mode:served}") String mode) {
        return mode.equals("local") ? Mode.LOCAL : Mode.SERVED;
    }

    /** Each check takes a quarter of a second on purpose. */
    @Bean
    PasswordEncoder passwords(@Value("${plumbleaf.bcrypt-rounds:" + BCRYPT_ROUNDS + "}") int rounds) {
        return new BCryptPasswordEncoder(rounds);
    }

    /** Programs come with a key of a person and no cookie, so nothing of theirs can be borrowed by a page elsewhere. */
    @Bean
    @Order(1)
    SecurityFilterChain programsOnTheApi(HttpSecurity http, Mode mode, ApiTokens tokens) {
        http.securityMatcher("/api/**");
        http.csrf(csrf -> csrf.disable());
        http.sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS));
        http.headers(SecurityRules::headers);
        http.requestCache(cache -> cache.disable());
        http.logout(out -> out.disable());
        http.addFilterBefore(new KeyOfAProgram(tokens, mode), UsernamePasswordAuthenticationFilter.class);
        http.exceptionHandling(on -> on.authenticationEntryPoint(KeyOfAProgram::noKey)
                .accessDeniedHandler((request, answer, denied) -> KeyOfAProgram.notAllowed(answer)));
        if (mode == Mode.LOCAL)
            http.authorizeHttpRequests(ask -> ask.anyRequest().permitAll());
        else http.authorizeHttpRequests(ask -> ask.anyRequest().access(byRole()));
        return http.build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain peopleOnPages(HttpSecurity http, Mode mode, SignInThrottle throttle) {
        http.csrf(csrf -> csrf.csrfTokenRepository(cookieOnly()));
        http.headers(SecurityRules::headers);
        if (mode == Mode.LOCAL) {
            http.sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS));
            http.authorizeHttpRequests(ask -> ask.anyRequest().permitAll());
            return http.build();
        }
        http.authorizeHttpRequests(
                ask -> ask.requestMatchers(OPEN).permitAll().anyRequest().access(byRole()));
        // Where somebody wanted to go is kept by their own browser: strangers leave nothing in the store.
        CookieRequestCache wanted = new CookieRequestCache();
        http.requestCache(cache -> cache.requestCache(wanted));
        SavedRequestAwareAuthenticationSuccessHandler goOn = new SavedRequestAwareAuthenticationSuccessHandler();
        goOn.setRequestCache(wanted);
        http.addFilterBefore(new SlowedSignIn(throttle), UsernamePasswordAuthenticationFilter.class);
        http.formLogin(form -> form.loginPage("/sign-in")
                .usernameParameter(SlowedSignIn.NAME)
                .successHandler((request, answer, who) -> {
                    throttle.letIn(who.getName(), request.getRemoteAddr());
                    goOn.onAuthenticationSuccess(request, answer, who);
                })
                .failureHandler((request, answer, refused) -> {
                    String name = request.getParameter(SlowedSignIn.NAME);
                    throttle.refused(name == null ? "" : name, request.getRemoteAddr());
                    answer.sendRedirect("/sign-in?again");
                }));
        http.logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in"));
        return http.build();
    }

    /** In local mode the very first filter; in served mode it lets everything pass by not being there. */
    @Bean
    FilterRegistrationBean<OnlyThisMachine> onlyThisMachine(Mode mode) {
        FilterRegistrationBean<OnlyThisMachine> filter = new FilterRegistrationBean<>(new OnlyThisMachine());
        filter.setOrder(Ordered.HIGHEST_PRECEDENCE);
        filter.setEnabled(mode == Mode.LOCAL);
        return filter;
    }

    @Bean
    FilterRegistrationBean<RequestRate> requestRate(
            Mode mode,
            @Value("${plumbleaf.rate.burst:300}") int burst,
            @Value("${plumbleaf.rate.per-second:40}") int perSecond) {
        FilterRegistrationBean<RequestRate> filter = new FilterRegistrationBean<>(new RequestRate(burst, perSecond));
        filter.setOrder(Ordered.HIGHEST_PRECEDENCE + 1);
        filter.setEnabled(mode == Mode.SERVED);
        return filter;
    }

    @Bean
    FilterRegistrationBean<RequestLog> requestLog(Mode mode) {
        FilterRegistrationBean<RequestLog> filter = new FilterRegistrationBean<>(new RequestLog());
        filter.setOrder(Ordered.HIGHEST_PRECEDENCE);
        filter.setEnabled(mode == Mode.SERVED);
        return filter;
    }

    /** The cookie of a sign-in: for the server alone, for this site alone, over TLS alone where there is TLS. */
    @Bean
    CookieSerializer sessionCookie() {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName("plumbleaf");
        cookie.setCookiePath("/");
        cookie.setUseHttpOnlyCookie(true);
        cookie.setSameSite("Lax");
        return cookie;
    }

    @Bean
    WhoIsThere whoIsThere(Mode mode, People people) {
        return new WhoIsThere(mode, people);
    }

    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(features -> features.policy(FEATURE_POLICY));
    }

    private static AuthorizationManager<RequestAuthorizationContext> byRole() {
        return (who, context) -> new AuthorizationDecision(isAllowed(who.get(), context.getRequest()));
    }

    private static boolean isAllowed(Authentication who, HttpServletRequest request) {
        if (!who.isAuthenticated()) return false;
        String path = RoleRules.path(request);
        for (Role role : Role.values()) {
            boolean has = who.getAuthorities().stream()
                    .anyMatch(authority -> ("ROLE_" + role.name()).equals(authority.getAuthority()));
            if (has) return RoleRules.may(role, request.getMethod(), path);
        }
        return false;
    }

    /** The token's cookie is read by the server alone; pages carry it in their forms. */
    private static CookieCsrfTokenRepository cookieOnly() {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Strict"));
        return tokens;
    }
}
