package plumbleaf.web.people;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** The doors: who may ask for what, and the headers that keep a page to itself. Forms carry a token; scripts come from files only. */
@Configuration(proxyBeanMethods = false)
class SecurityRules {
    private static final String CONTENT_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self';"
                    + " img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final String FEATURE_POLICY = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";

    private static final int BCRYPT_ROUNDS = 12;

    @Bean
    Mode mode(@Value("${plumbleaf.mode:served}") String mode) {
        return mode.equals("local") ? Mode.LOCAL : Mode.SERVED;
    }

    /** Each check takes a quarter of a second on purpose. */
    @Bean
    PasswordEncoder passwords() {
        return new BCryptPasswordEncoder(BCRYPT_ROUNDS);
    }

    @Bean
    SecurityFilterChain rules(HttpSecurity http, Mode mode) {
        http.csrf(csrf -> csrf.csrfTokenRepository(cookieOnly()));
        http.headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(features -> features.policy(FEATURE_POLICY)));
        if (mode == Mode.LOCAL) {
            http.authorizeHttpRequests(ask -> ask.anyRequest().permitAll());
            return http.build();
        }
        http.authorizeHttpRequests(ask -> ask.requestMatchers(
                        "/assets/**", "/drawing.css", "/sign-in", "/first-owner", "/error", "/actuator/health/**")
                .permitAll()
                .anyRequest()
                .authenticated());
        http.formLogin(form -> form.loginPage("/sign-in")
                .usernameParameter("signIn")
                .defaultSuccessUrl("/")
                .failureUrl("/sign-in?again"));
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
    WhoIsThere whoIsThere(Mode mode, People people) {
        return new WhoIsThere(mode, people);
    }

    /** The token's cookie is read by the server alone; pages carry it in their forms. */
    private static CookieCsrfTokenRepository cookieOnly() {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Strict"));
        return tokens;
    }
}
