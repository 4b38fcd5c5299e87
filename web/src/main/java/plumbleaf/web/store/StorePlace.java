package plumbleaf.web.store;

import java.time.Clock;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.PlatformTransactionManager;

/**
 * Where the jobs are kept: one setting, {@code plumbleaf.store}, either the path of an SQLite file or the address of a PostgreSQL
 * database ({@code jdbc:postgresql://...}).
 */
@Configuration(proxyBeanMethods = false)
class StorePlace {
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    /** Where whoever started the workspace did not open it already. */
    @Bean(destroyMethod = "close")
    @ConditionalOnMissingBean
    Database database(@Value("${plumbleaf.store}") String place) {
        return Database.open(place);
    }

    /** The same connections for the sign-ins, which Spring Session keeps. Closed by the database. */
    @Bean(destroyMethod = "")
    DataSource dataSource(Database database) {
        return database.dataSource();
    }

    @Bean
    PlatformTransactionManager transactions(Database database) {
        return database.transactions();
    }
}
