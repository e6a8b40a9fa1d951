package crowdline.live.now;

/** From where the plan counts when early and late are told. */
public enum PlanAnchor {
    /** The moment the act started. */
    ACT_START,
    /** The start of the slot in the running order; the act's start if the slot is not known. */
    SLOT
}
