package beltmark.web;

/**
 * Everything one template shows. Each page is a record named {@code …Page}; its template is found by package and name:
 * {@code beltmark.people.SignInPage} is {@code people/signIn.jte}.
 */
public interface Page {

    /** {@return what all pages of this request share} */
    View view();
}
