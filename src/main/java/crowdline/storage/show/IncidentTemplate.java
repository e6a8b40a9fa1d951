package crowdline.storage.show;

import crowdline.show.Announcement;
import crowdline.show.Incident;
import crowdline.storage.json.Fields;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import crowdline.storage.json.Refusals;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import tools.jackson.databind.JsonNode;

/**
 * Words to start an incident page from. They are nobody's agreed words: the organiser puts their own in and agrees them
 * with the display director before the day.
 *
 * @param notice what must be done before the page is used
 * @param incident the page, agreed with nobody
 * @param announcements words for other occasions, agreed with nobody
 */
public record IncidentTemplate(String notice, Incident incident, List<Announcement> announcements) {
    public IncidentTemplate {
        announcements = List.copyOf(announcements);
    }

    private static final String RESOURCE = "/crowdline/incident-template.json";

    /** The template that comes with the program. */
    public static IncidentTemplate shipped() {
        try (InputStream in = Objects.requireNonNull(IncidentTemplate.class.getResourceAsStream(RESOURCE), RESOURCE)) {
            ParsedJson parsed = JsonParsing.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            JsonNode root = Objects.requireNonNull(parsed.root(), RESOURCE);
            Fields fields = new Fields(root, "", new Refusals());
            return new IncidentTemplate(
                    fields.text("notice"),
                    ShowFromTree.incident(fields.group("incident")),
                    fields.list("announcements", ShowFromTree::announcement));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
