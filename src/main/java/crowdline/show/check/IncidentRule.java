package crowdline.show.check;

import crowdline.show.Incident;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.util.function.Consumer;

/** The words for when something goes wrong are there, and somebody who may has agreed them. */
final class IncidentRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        Incident incident = show.incident();
        if (incident == null) {
            findings.accept(new Finding(
                    Severity.ERROR,
                    "no-incident-page",
                    "the show has no incident page; start from what crowdline incident-template prints, put your own"
                            + " words in, and agree them with the display director",
                    ""));
            return;
        }
        String agreedWith = incident.agreedWith();
        if (agreedWith == null || agreedWith.isBlank()) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "incident-not-agreed",
                    "the incident page is not agreed with anyone; agree it with the display director and write who and"
                            + " when into agreedWith",
                    "incident"));
        }
        if (incident.firstSteps().isEmpty()) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "incident-without-steps",
                    "the incident page does not say what to do first; add firstSteps",
                    "incident"));
        }
        if (incident.contacts().isEmpty()) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "incident-without-contacts",
                    "the incident page names nobody to reach; add contacts",
                    "incident"));
        }
    }
}
