package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.show.Incident;
import crowdline.storage.json.JsonOut;
import crowdline.storage.show.IncidentTemplate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Prints a neutral incident page to start from. */
@Command(
        name = "incident-template",
        mixinStandardHelpOptions = true,
        description = "Prints a plain incident page, to put into a show file and agree with the display director.")
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
        terminal.json(JsonOut.of(Map.of("incident", page)));
        terminal.err().println(template.notice());
        return ExitCode.FINE;
    }
}
