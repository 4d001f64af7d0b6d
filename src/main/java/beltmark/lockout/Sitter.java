package beltmark.lockout;

import beltmark.web.Visitor;

/**
 * Who sits the quiz.
 *
 * @param personId the person
 * @param crewId the crew the person belongs to while sitting it
 */
public record Sitter(long personId, long crewId) {

    static Sitter of(Visitor visitor) {
        return new Sitter(visitor.personId(), visitor.crewId());
    }
}
