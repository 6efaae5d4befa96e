// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Duration;
import org.earleaf.app.web.server.Doorway;
import org.earleaf.app.words.WordsMessages;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.http.converter.autoconfigure.HttpMessageConvertersAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.HttpEncodingAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.MultipartAutoConfiguration;
import org.springframework.boot.thymeleaf.autoconfigure.ThymeleafAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.WebMvcAutoConfiguration;
import org.springframework.context.MessageSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** What the server is made of: named one by one, because looking for parts costs the grower a second at every start. */
@Configuration(proxyBeanMethods = false)
@ImportAutoConfiguration({
    TomcatServletWebServerAutoConfiguration.class,
    MultipartAutoConfiguration.class,
    DispatcherServletAutoConfiguration.class,
    WebMvcAutoConfiguration.class,
    HttpEncodingAutoConfiguration.class,
    HttpMessageConvertersAutoConfiguration.class,
    ThymeleafAutoConfiguration.class
})
@Import({
    Doorway.class,
    Guard.class,
    Frame.class,
    Faults.class,
    MorningPage.class,
    CalendarPage.class,
    Waits.class,
    KeptMorning.class,
    PlanPage.class,
    FieldPage.class,
    OptionsPage.class,
    PastPage.class,
    WalkPage.class,
    PhotographPage.class,
    RigsPage.class,
    LoadPage.class,
    NewLoadPage.class,
    TankPage.class,
    PaperPage.class,
    RenamePage.class,
    ShelfPage.class,
    AgainPage.class,
    RecordsPage.class,
    WhyPage.class,
    LookPage.class
})
class WebConfig implements WebMvcConfigurer {
    /** What templates write as {@code #{key}}; the name is Spring's. */
    @Bean
    MessageSource messageSource() {
        return new WordsMessages();
    }

    /** Every address of a file carries its fingerprint, so that it may be kept for ever. */
    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        registry.addResourceHandler("/static/**")
                .addResourceLocations("classpath:/static/")
                .setCacheControl(
                        CacheControl.maxAge(Duration.ofDays(365)).cachePublic().immutable());
    }
}
