// Package desk answers the page's buttons: what each does to the boats, and what the
// page then says, saves or prints, as a Reply. It is pure; the bridge carries a Reply
// out. What stands under the buttons from then on is asked of it by the bridge.
package desk
