// Package loopback answers cells of a spreadsheet over HTTP, on this machine
// only: GET /v1/NAME?input=value gives the number as text.
//
//	handler, err := loopback.New(netip.MustParseAddrPort("127.0.0.1:8460"))
//	server := loopback.Server(handler)
//
// What a cell is told:
//
//   - one output: a bare number, "93.8712"; several: say which with
//     output=NAME, in another unit with unit=UNIT;
//   - as=xml: every output, <r><v name="pressure" unit="kPa">93.8712</v></r>,
//     or <r><error>reason</error></r>;
//   - a mistake: "ERROR: reason" with status 200, since a spreadsheet shows no
//     text that comes with another status.
//
// Answers depend on the address alone, as spreadsheets keep them by address.
//
// Who is not answered (status 403): a request to another host name (a name that
// was made to point here), and one that a web page sends (it has Origin, or
// Sec-Fetch-Site other than none). There are no CORS headers.
//
//   - Source: RFC 9110, HTTP Semantics (2022); W3C, Fetch Metadata Request
//     Headers.
//   - Limits: address 2048 bytes, headers 16 KiB, no body, 5 seconds for each
//     of reading, writing and waiting.
package loopback
