package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.show.Announcement;
import crowdline.show.Incident;
import crowdline.storage.json.JsonOut;
import crowdline.storage.show.IncidentTemplate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Prints a neutral incident page and announcements to start from. */
@Command(
        name = "incident-template",
        mixinStandardHelpOptions = true,
        description =
                "Prints a plain incident page and other announcements, to put into a show file and agree with the display director.")
public final class IncidentTemplateCommand implements Callable<Integer> {
    private final Terminal terminal;

    public IncidentTemplateCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        IncidentTemplate template = IncidentTemplate.shipped();
        Incident incident = template.incident();
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("firstSteps", incident.firstSteps());
        page.put("words", incident.words());
        page.put("contacts", incident.contacts());
        Map<String, Object> both = new LinkedHashMap<>();
        both.put("incident", page);
        both.put(
                "announcements",
                template.announcements().stream()
                        .map(IncidentTemplateCommand::keys)
                        .toList());
        terminal.json(JsonOut.of(both));
        terminal.err().println(template.notice());
        return ExitCode.FINE;
    }

    private static Map<String, Object> keys(Announcement announcement) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("id", announcement.id());
        keys.put("occasion", announcement.occasion());
        keys.put("words", announcement.words());
        return keys;
    }
}
