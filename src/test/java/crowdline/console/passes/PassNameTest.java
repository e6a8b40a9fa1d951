package crowdline.console.passes;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.timing.Pass;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class PassNameTest {
    /** Summer time in Rome is two hours ahead. */
    @Test
    void aPassIsNamedByTheHourOfTheVenue() {
        Pass pass = Pass.of("p", "act", "full", Pass.How.BY_LOG, Instant.parse("2026-06-06T22:30:00Z"), List.of());
        assertThat(new PassName(ZoneId.of("Europe/Rome")).of(3, pass))
                .isEqualTo("Pass 3, from a log, 7 Jun 2026, 00:30");
    }
}
