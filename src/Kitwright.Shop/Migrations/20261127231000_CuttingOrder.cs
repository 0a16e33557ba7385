using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Kitwright.Shop.Migrations
{
    /// <inheritdoc />
    public partial class CuttingOrder : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Aims",
                table: "Terms",
                type: "TEXT",
                nullable: false,
                defaultValue: "Purchase Settings Cuts Surplus Leftover");

            migrationBuilder.AddColumn<string>(
                name: "Goal",
                table: "Terms",
                type: "TEXT",
                maxLength: 100,
                nullable: false,
                defaultValue: "ByTheStep");

            migrationBuilder.AddColumn<int>(
                name: "Layers",
                table: "Terms",
                type: "INTEGER",
                nullable: false,
                defaultValue: 1);

            migrationBuilder.AddColumn<int>(
                name: "SquareEvery",
                table: "Terms",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<long>(
                name: "SquaringLossTicks",
                table: "Terms",
                type: "INTEGER",
                nullable: false,
                defaultValue: 4064L);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Aims",
                table: "Terms");

            migrationBuilder.DropColumn(
                name: "Goal",
                table: "Terms");

            migrationBuilder.DropColumn(
                name: "Layers",
                table: "Terms");

            migrationBuilder.DropColumn(
                name: "SquareEvery",
                table: "Terms");

            migrationBuilder.DropColumn(
                name: "SquaringLossTicks",
                table: "Terms");
        }
    }
}
