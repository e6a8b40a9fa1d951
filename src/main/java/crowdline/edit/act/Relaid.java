package crowdline.edit.act;

import crowdline.layout.LaidOut;
import crowdline.show.Act;
import java.util.List;

/**
 * An act laid out again.
 *
 * @param act with transits made anew
 * @param findings what could not be had
 */
record Relaid(Act act, List<LaidOut.Finding> findings) {
    Relaid {
        findings = List.copyOf(findings);
    }
}
