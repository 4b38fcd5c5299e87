package plumbleaf.web.page;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Style sheets, scripts, fonts and the guide's pictures, all from the one jar; asked for again each time, sent again only when they changed. */
@Configuration(proxyBeanMethods = false)
class Assets implements WebMvcConfigurer {
    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        registry.addResourceHandler("/assets/**")
                .addResourceLocations("classpath:/plumbleaf/web/assets/")
                .setCacheControl(CacheControl.noCache());
        registry.addResourceHandler("/guide/pictures/**")
                .addResourceLocations("classpath:/plumbleaf/web/guide/pictures/")
                .setCacheControl(CacheControl.noCache());
    }
}
