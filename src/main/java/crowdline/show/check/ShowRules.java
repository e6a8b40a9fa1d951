package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** What a show must and should have beyond the form of its file: names that lead somewhere, slots that fit, words. */
public final class ShowRules {
    private static final List<ShowRule> RULES = List.of(
            new IdRule(),
            new ReferenceRule(),
            new FigureRule(),
            new TimedRule(),
            new VariantRule(),
            new SlotRule(),
            new LimitRule(),
            new PlausibleRule(),
            new AirframeRule(),
            new PlaceRule(),
            new UnknownPlaceRule(),
            new IncidentRule(),
            new AnnouncementRule(),
            new RemarkRule(),
            new DutyRule(),
            new PieceRule(),
            new SpeakerRule(),
            new LanguageRule(),
            new PerformerRule(),
            new SayAsRule(),
            new GlossaryRule());

    private ShowRules() {}

    /**
     * Everything there is to say about a show, in the order of the rules.
     *
     * @param catalogue the shipped figures; the show's own are added here
     */
    public static List<Finding> check(Show show, Catalogue catalogue) {
        Catalogue all = catalogue.with(show.figures());
        List<Finding> findings = new ArrayList<>();
        RULES.forEach(rule -> rule.check(show, all, findings::add));
        return List.copyOf(findings);
    }
}
