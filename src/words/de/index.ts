/** All rooms of the interface in this language: for the compiler and the tests. Pages take each room by itself, `#words/record.ts`. */

export * as cannotBe from "./cannot-be.ts";
export * as carryOut from "./carry-out.ts";
export * as certificate from "./certificate.ts";
export * as conclude from "./conclude.ts";
export * as fact from "./fact.ts";
export * as furtherTests from "./further-tests.ts";
export * as ionNames from "./ion-names.ts";
export * as language from "./language.ts";
export * as layout from "./layout.ts";
export * as markReason from "./mark-reason.ts";
export * as marking from "./marking.ts";
export * as nextTest from "./next-test.ts";
export * as observation from "./observation.ts";
export * as paperSays from "./paper-says.ts";
export * as practise from "./practise.ts";
export * as practiseLook from "./practise-look.ts";
export * as practiseResult from "./practise-result.ts";
export * as read from "./read.ts";
export * as reading from "./reading.ts";
export * as record from "./record.ts";
export * as repeats from "./repeats.ts";
export * as saltName from "./salt-name.ts";
export * as sequence from "./sequence.ts";
export * as steps from "./steps.ts";
export * as walkthrough from "./walkthrough.ts";
export * as whatChanged from "./what-changed.ts";
