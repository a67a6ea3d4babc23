package delimited_test

import (
	"fmt"
	"io"
	"strings"

	"example.org/zymase/examples/bridge/delimited"
)

func ExampleReader() {
	rows := delimited.NewReader(strings.NewReader("batch,remark\r\n7,\"dry, \"\"clear\"\"\"\r\n"), ',')
	var row delimited.Row
	for {
		raw, err := rows.Next()
		if err == io.EOF {
			break
		}
		if err != nil {
			fmt.Println(err)
			return
		}
		row.Split(raw, ',')
		fmt.Printf("line %d: %s | %s stands in the file as %s\n", rows.Line(), row.Text(0), row.Text(1), row.Cell(1))
	}
	// Output:
	// line 1: batch | remark stands in the file as remark
	// line 2: 7 | dry, "clear" stands in the file as "dry, ""clear"""
}

func ExampleAppendText() {
	fmt.Printf("%s\n", delimited.AppendText(nil, `=HYPERLINK("x")`, ','))
	fmt.Printf("%s\n", delimited.AppendText(nil, "dry, clear", ','))
	fmt.Printf("%s\n", delimited.AppendText(nil, "dry, clear", ';'))
	// Output:
	// "'=HYPERLINK(""x"")"
	// "dry, clear"
	// dry, clear
}

func ExampleAppendNumber() {
	fmt.Printf("%s\n", delimited.AppendNumber(nil, []byte("-0.5"), ';', true))
	// Output: -0,5
}
